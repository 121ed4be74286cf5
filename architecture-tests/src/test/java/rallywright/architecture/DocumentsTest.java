package rallywright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The documents name only classes, commands and documents that exist. */
class DocumentsTest {

  private static final Path HOME = Path.of("..");
  private static final Pattern CLASS_NAME = Pattern.compile("`([A-Z][a-z]+[A-Za-z]*)`");
  private static final Pattern RUN = Pattern.compile("\\./rallywright ([a-z]+)");
  private static final Pattern COMMAND = Pattern.compile("name = \"([a-z]+)\"");
  private static final Pattern LINK = Pattern.compile("(?<!!)\\[[^\\]]*\\]\\(([^):#]+)\\)");
  private static final Pattern CONSTANT = Pattern.compile("`([A-Z]+_[A-Z0-9_]+)`");
  private static final Pattern CAPITALS = Pattern.compile("\\b([A-Z]+_[A-Z0-9_]+)\\b");
  private static final int FEWEST_CLASSES = 15;
  private static final int FEWEST_LINKS = 30;

  @ParameterizedTest
  @ValueSource(strings = {"docs/models", "docs/rules"})
  void documents_nameOnlyClassesThatExist(String folder) throws IOException {
    Set<String> named = found(CLASS_NAME, files(HOME.resolve(folder), ".md"));
    Set<String> existing =
        files(HOME.resolve("engine/src/main/java"), ".java").stream()
            .map(file -> file.getFileName().toString().replace(".java", ""))
            .collect(Collectors.toSet());
    assertThat(named).hasSizeGreaterThanOrEqualTo(FEWEST_CLASSES);
    assertThat(existing).containsAll(named);
  }

  @Test
  void rules_nameOnlyConstantsThatExist() throws IOException {
    Set<String> named = found(CONSTANT, files(HOME.resolve("docs/rules"), ".md"));
    Set<String> existing =
        found(CAPITALS, files(HOME.resolve("engine/src/main/java/rallywright/engine"), ".java"));
    assertThat(named).hasSizeGreaterThanOrEqualTo(FEWEST_CLASSES);
    assertThat(existing).containsAll(named);
  }

  @Test
  void readmeAndGuide_nameOnlyCommandsThatExist() throws IOException {
    Set<Path> pages = files(HOME.resolve("docs/guide"), ".md");
    pages.add(HOME.resolve("README.md"));
    Set<String> named = found(RUN, pages);
    Set<String> existing =
        found(COMMAND, files(HOME.resolve("cli/src/main/java/rallywright/cli"), "Command.java"));
    assertThat(named).contains("demo", "serve", "backup", "export", "import");
    assertThat(existing).containsAll(named);
  }

  @Test
  void documents_linkOnlyToWhatExists() throws IOException {
    Set<Path> pages = files(HOME.resolve("docs"), ".md");
    pages.add(HOME.resolve("README.md"));
    int links = 0;
    for (Path page : pages) {
      for (String link : found(LINK, Set.of(page))) {
        assertThat(page.resolveSibling(link)).as("%s in %s", link, page).exists();
        links++;
      }
    }
    assertThat(links).isGreaterThanOrEqualTo(FEWEST_LINKS);
  }

  private static Set<String> found(Pattern pattern, Set<Path> files) throws IOException {
    Set<String> names = new TreeSet<>();
    for (Path file : files) {
      pattern.matcher(Files.readString(file)).results().forEach(hit -> names.add(hit.group(1)));
    }
    return names;
  }

  private static Set<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).collect(Collectors.toSet());
    }
  }
}
