package rallywright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Classes with tests must end in a way that the build runs. */
class TestNamesTest {

  private static final int FEWEST_TEST_CLASSES = 3;

  @Test
  void everyClassWithTests_hasAnEndingThatTheBuildRuns() throws IOException {
    List<Path> withTests = testClasses();
    assertThat(withTests).hasSizeGreaterThanOrEqualTo(FEWEST_TEST_CLASSES);
    assertThat(withTests)
        .allSatisfy(
            file -> assertThat(file.getFileName().toString()).matches(".*(Test|IT)\\.java"));
  }

  private static List<Path> testClasses() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(".."))) {
      return files
          .filter(file -> file.toString().contains("/src/test/java/"))
          .filter(file -> file.toString().endsWith(".java"))
          .filter(TestNamesTest::holdsTests)
          .toList();
    }
  }

  private static boolean holdsTests(Path file) {
    try {
      String text = Files.readString(file);
      return Stream.of("@Test", "@Property", "@ParameterizedTest", "@TestFactory", "@Example")
          .anyMatch(mark -> text.contains("\n  " + mark));
    } catch (IOException problem) {
      throw new IllegalStateException("Could not read " + file, problem);
    }
  }
}
