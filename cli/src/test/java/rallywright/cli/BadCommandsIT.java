package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import picocli.CommandLine;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Every command answers bad input in one line and leaves every file as it was. */
class BadCommandsIT {

  @TempDir private static Path folder;

  @BeforeAll
  static void prepare() throws IOException {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve("club")))) {
      store.players().save(player());
    }
    Files.writeString(folder.resolve("text.txt"), "Ilse won, I think.\n");
    Files.writeString(
        folder.resolve("certificate.pem"),
        "-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n");
    Files.writeString(folder.resolve("empty.json"), "");
    Files.writeString(folder.resolve("list.json"), "[]");
    Files.writeString(folder.resolve("object.json"), "{}");
    assertThat(new Run("export @export.zip --data @club").code())
        .as("the export that later rows read")
        .isZero();
  }

  @ParameterizedTest(name = "{1}")
  @CsvFileSource(resources = "/bad-input/commands.csv", delimiter = '|', numLinesToSkip = 2)
  void command_givenWrongly_isAnsweredInOneLineAndChangesNothing(
      int code, String arguments, String words) {
    Map<String, String> before = contents();

    Run run = new Run(arguments);

    assertThat(run.code()).isEqualTo(code);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().strip().lines()).hasSize(1);
    assertThat(run.err()).contains(words);
    assertThat(contents()).isEqualTo(before);
  }

  @Test
  void import_ofAnotherFile_namesItAndStoresNothing() {
    Map<String, String> before = contents();
    Run run = new Run("import @text.txt --data @club");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().strip().lines())
        .satisfiesExactly(
            line -> assertThat(line).startsWith("text.txt: This is not a whole export"),
            line -> assertThat(line).startsWith("Nothing was stored: 1 problem"));
    assertThat(contents()).isEqualTo(before);
  }

  /** The files in the folder with what they hold; the club by its people, as its pages see them. */
  private static Map<String, String> contents() {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.startsWith(folder.resolve("club"))) {
          contents.put(file.toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve("club")))) {
      contents.put("club", store.contents().toString());
    }
    return contents;
  }

  /** One run of the program inside this process. */
  private static final class Run {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final int code;

    Run(String arguments) {
      CommandLine program = Rallywright.commandLine();
      program.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
      code = program.execute(arguments.replace("@", folder + "/").strip().split(" +"));
    }

    int code() {
      return code;
    }

    String out() {
      return out.toString();
    }

    String err() {
      return err.toString();
    }
  }

  private static Player player() {
    return new Player(
        new PlayerId("p-1"),
        "Marlo Quint",
        null,
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }
}
