package rallywright.web;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The forms of all pages, found by following the links of the pages. */
final class PostedForms {

  private static final int MOST_PAGES = 120;
  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
  private static final Pattern FORM = Pattern.compile("(?s)<form([^>]*)>(.*?)</form>");
  private static final Pattern ACTION = Pattern.compile("action=\"([^\"?]*)");
  private static final Pattern NAME = Pattern.compile("name=\"([^\"]+)\"");
  private static final Pattern VALUE = Pattern.compile("value=\"([^\"]*)\"");
  private static final Pattern FIELD = Pattern.compile("<(?:input|select|textarea|button)[^>]*>");
  private static final Pattern CHOICE = Pattern.compile("<option[^>]*value=\"([^\"]*)\"");

  private final Map<String, Map<String, String>> fields = new HashMap<>();
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> pages = new LinkedHashSet<>();

  private PostedForms() {}

  /** Reads all pages that a coach can reach. */
  static PostedForms of(CoachBrowser coach, List<String> starts) {
    PostedForms forms = new PostedForms();
    Deque<String> due = new ArrayDeque<>(starts);
    while (!due.isEmpty() && forms.pages.size() < MOST_PAGES) {
      String page = due.poll();
      if (!forms.pages.add(page)) {
        continue;
      }
      HttpResponse<String> answer = coach.get(page);
      boolean html = answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html");
      if (html && answer.statusCode() == 200) {
        forms.read(page, answer.body());
        due.addAll(links(answer.body()));
      }
    }
    return forms;
  }

  private static List<String> links(String page) {
    List<String> links = new ArrayList<>();
    Matcher link = LINK.matcher(page);
    while (link.find()) {
      String to = link.group(1).replace("&amp;", "&").replace(" ", "%20");
      if (!to.matches("/(css|js|fonts|favicon|oncourt|settings/copy).*|.*/changes")) {
        links.add(to);
      }
    }
    return links;
  }

  private void read(String page, String body) {
    Matcher form = FORM.matcher(body);
    while (form.find()) {
      Matcher action = ACTION.matcher(form.group(1));
      String to = action.find() ? action.group(1) : page.replaceFirst("\\?.*", "");
      Map<String, String> found = fields.computeIfAbsent(shape(to), any -> new LinkedHashMap<>());
      Matcher field = FIELD.matcher(form.group(2));
      while (field.find()) {
        Matcher name = NAME.matcher(field.group());
        if (name.find() && !name.group(1).equals("_csrf")) {
          found.putIfAbsent(name.group(1), value(field, form.group(2)));
          names.add(name.group(1));
        }
      }
    }
  }

  private static String value(Matcher field, String form) {
    Matcher value = VALUE.matcher(field.group());
    if (value.find()) {
      return value.group(1);
    }
    Matcher choice = CHOICE.matcher(form).region(field.end(), form.length());
    return field.group().startsWith("<select") && choice.find() ? choice.group(1) : "1";
  }

  /** An address without what is different from thing to thing: the words of its path. */
  private static String shape(String path) {
    return path.replaceAll("/(?!new$|import|store|groups|venues)[^/]*[0-9-][^/]*", "/*");
  }

  /** The fields of the form that posts to an address, with good values; empty if none was found. */
  Map<String, String> fieldsOf(String path) {
    return fields.getOrDefault(shape(path), Map.of());
  }

  /** The names of all fields. */
  List<String> names() {
    return List.copyOf(names);
  }

  /** The pages that were read. */
  List<String> pages() {
    return List.copyOf(pages);
  }
}
