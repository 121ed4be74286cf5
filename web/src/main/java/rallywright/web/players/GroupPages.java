package rallywright.web.players;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The groups: make, rename, choose the members, take away. */
@Controller
final class GroupPages {

  private final ClubStore store;
  private final PageFrames frames;

  GroupPages(ClubStore store, PageFrames frames) {
    this.store = store;
    this.frames = frames;
  }

  @GetMapping("/players/groups")
  String list(HttpServletRequest request, Model model) {
    return showList(Form.empty(), request, model);
  }

  @PostMapping("/players/groups")
  String add(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    String name = name(in, null);
    if (in.failed()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return showList(in.form(), request, model);
    }
    GroupId id = new GroupId(store.freshId());
    store.groups().save(new Group(id, name, Set.of()));
    Confirmation.say(redirect, "The group " + name + " was made. Choose who is in it.");
    return "redirect:/players/groups/" + id;
  }

  @GetMapping("/players/groups/{id}")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    Group group = find(id);
    Form form =
        Form.empty()
            .with("name", group.name())
            .with("members", group.members().stream().map(PlayerId::value).toArray(String[]::new));
    return showOne(group, form, request, model);
  }

  @PostMapping("/players/groups/{id}")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    Group group = find(id);
    FormReader in = FormReader.of(request);
    String name = name(in, group);
    Set<PlayerId> members = new LinkedHashSet<>();
    Map<String, String> offered = players();
    for (String member : in.all("members")) {
      if (offered.containsKey(member)) {
        members.add(new PlayerId(member));
      } else {
        in.problem("members", "One of the players is not there any more. Load the page again.");
      }
    }
    if (in.failed()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return showOne(group, in.form(), request, model);
    }
    store.groups().save(new Group(group.id(), name, members));
    Confirmation.say(redirect, "The group " + name + " was changed.");
    return "redirect:/players/groups";
  }

  @PostMapping("/players/groups/{id}/remove")
  String remove(@PathVariable String id, RedirectAttributes redirect) {
    Group group = find(id);
    store.groups().remove(group.id());
    Confirmation.say(redirect, "The group " + group.name() + " was deleted; its players stay.");
    return "redirect:/players/groups";
  }

  private String name(FormReader in, @Nullable Group before) {
    String name = in.text("name", "The group's name", Player.LONGEST_NAME);
    boolean twin =
        store.groups().all().stream()
            .filter(group -> before == null || !group.id().equals(before.id()))
            .anyMatch(group -> PlayerForm.same(group.name(), name));
    if (twin) {
      in.problem(
          "name",
          "There is already a group named \"" + FormReader.echo(name) + "\". Maybe add the day.");
    }
    return name;
  }

  private Group find(String id) {
    return store
        .groups()
        .find(new GroupId(id))
        .orElseThrow(() -> new NotHere("There is no such group. Maybe it was deleted."));
  }

  private Map<String, String> players() {
    Map<String, String> offered = new LinkedHashMap<>();
    store.players().all().stream()
        .filter(each -> each.standing() != Standing.ERASED)
        .forEach(each -> offered.put(each.id().value(), each.name()));
    return offered;
  }

  private String showList(Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Groups", PageFrame.Part.PLAYERS, request));
    model.addAttribute("groups", store.groups().all());
    model.addAttribute("form", form);
    return "players/groups";
  }

  private String showOne(Group group, Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame(group.name(), PageFrame.Part.PLAYERS, request));
    model.addAttribute("group", group);
    model.addAttribute("players", players());
    model.addAttribute("form", form);
    return "players/group";
  }
}
