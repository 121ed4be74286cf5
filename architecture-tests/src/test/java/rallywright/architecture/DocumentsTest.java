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

/** The documents name only classes, commands and documents that exist. */
class DocumentsTest {

  private static final Path HOME = Path.of("..");
  private static final Pattern CLASS_NAME = Pattern.compile("`([A-Z][a-z]+[A-Za-z]*)`");
  private static final Pattern RUN = Pattern.compile("\\./rallywright ([a-z]+)");
  private static final Pattern COMMAND = Pattern.compile("name = \"([a-z]+)\"");
  private static final Pattern LINK = Pattern.compile("(?<!!)\\[[^\\]]*\\]\\(([^):#]+)\\)");
  private static final int FEWEST_CLASSES = 15;

  @Test
  void modelCards_nameOnlyClassesThatExist() throws IOException {
    Set<String> named = found(CLASS_NAME, files(HOME.resolve("docs/models"), ".md"));
    Set<String> existing =
        files(HOME.resolve("engine/src/main/java"), ".java").stream()
            .map(file -> file.getFileName().toString().replace(".java", ""))
            .collect(Collectors.toSet());
    assertThat(named).hasSizeGreaterThanOrEqualTo(FEWEST_CLASSES);
    assertThat(existing).containsAll(named);
  }

  @Test
  void readme_namesOnlyCommandsThatExist() throws IOException {
    Set<String> named = found(RUN, Set.of(HOME.resolve("README.md")));
    Set<String> existing =
        found(COMMAND, files(HOME.resolve("cli/src/main/java/rallywright/cli"), "Command.java"));
    assertThat(named).contains("demo", "serve");
    assertThat(existing).containsAll(named);
  }

  @Test
  void readme_linksOnlyToDocumentsThatExist() throws IOException {
    Set<String> links = found(LINK, Set.of(HOME.resolve("README.md")));
    assertThat(links).isNotEmpty();
    assertThat(links).allSatisfy(link -> assertThat(HOME.resolve(link)).exists());
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
