package rallywright.web.oncourt;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * What the on-court page is made of, and a mark that tells one build of it from another.
 *
 * <p>The mark is made from the files themselves, so that a phone fetches the page anew exactly when
 * something in it has changed.
 */
@Component
public final class CourtApp {

  /** The page as such, the same for every session. */
  static final String SHELL = "/court/shell";

  private static final int MARK_BYTES = 8;
  private static final List<String> STYLES =
      List.of(
          "/css/names.css",
          "/css/rallywright.css",
          "/css/forms.css",
          "/css/tables.css",
          "/css/adapt.css",
          "/css/oncourt.css",
          "/css/oncourt-score.css",
          "/css/oncourt-sheets.css",
          "/css/oncourt-notes.css");
  private static final List<String> FONTS =
      List.of(
          "/fonts/source-sans-3-latin-400-normal.woff2",
          "/fonts/source-sans-3-latin-600-normal.woff2",
          "/fonts/rallywright-letters-400.woff2",
          "/fonts/rallywright-letters-600.woff2");
  private static final List<String> PICTURES =
      List.of("/favicon.svg", "/oncourt/icon-192.png", "/oncourt/icon-512.png");

  private final List<String> statics;
  private final String build;

  CourtApp() {
    try {
      statics = new ArrayList<>(modules());
      statics.addAll(STYLES);
      statics.addAll(FONTS);
      statics.addAll(PICTURES);
      build = markOf(statics);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The mark of this build. */
  public String build() {
    return build;
  }

  /** Everything a phone keeps, by address. */
  List<String> files() {
    List<String> files = new ArrayList<>(List.of("/court", SHELL, "/court/app.webmanifest"));
    files.addAll(statics);
    return files;
  }

  /** The scripts of the page, so that a browser need not find them one behind the other. */
  List<String> scripts() {
    return statics.stream().filter(file -> file.endsWith(".js")).toList();
  }

  /** The script that keeps the page on the phone. */
  String worker() {
    String list = files().stream().collect(Collectors.joining("', '", "['", "']"));
    try (InputStream body = new ClassPathResource("oncourt/worker.js").getInputStream()) {
      String text = new String(body.readAllBytes(), StandardCharsets.UTF_8);
      return "const BUILD = '%s';%nconst FILES = %s;%n".formatted(build, list) + text;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static List<String> modules() throws IOException {
    Resource[] found =
        new PathMatchingResourcePatternResolver()
            .getResources("classpath*:static/js/oncourt/**/*.js");
    List<String> modules = new ArrayList<>();
    for (Resource each : found) {
      String address = each.getURL().toString();
      modules.add(address.substring(address.indexOf("/js/oncourt/")));
    }
    return modules.stream().sorted().toList();
  }

  private static String markOf(List<String> files) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String file : files) {
        try (InputStream in = new ClassPathResource("static" + file).getInputStream()) {
          digest.update(file.getBytes(StandardCharsets.UTF_8));
          digest.update(in.readAllBytes());
        }
      }
      return HexFormat.of().formatHex(Arrays.copyOf(digest.digest(), MARK_BYTES));
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
