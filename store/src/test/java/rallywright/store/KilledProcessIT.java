package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;

/** A process that stores rallies is killed in the middle, as by a flat battery of the program. */
class KilledProcessIT {

  @ParameterizedTest
  @ValueSource(ints = {1, 40, 137})
  void acknowledgedRallies_afterTheProcessIsKilled_areThereOnce(int before) throws Exception {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
    }
    List<String> acknowledged = runAndKill(address, before);
    assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(before);
    try (ClubStore store = ClubStore.open(address)) {
      List<String> stored =
          store.events().of(Examples.MONDAY).stream()
              .map(event -> event.stamp().id().value())
              .filter(id -> id.startsWith("kill-"))
              .toList();
      assertThat(stored).doesNotHaveDuplicates().startsWith(acknowledged.toArray(new String[0]));
      List<CourtEvent> again = acknowledged.stream().map(KilledProcessIT::rally).toList();
      assertThat(store.events().append(again).added()).isZero();
    }
  }

  /** Starts the storing process, reads what it acknowledges and kills it in between. */
  private static List<String> runAndKill(StoreAddress address, int before) throws Exception {
    Path log = Files.createTempFile("rallywright-killed", ".log");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Storing.class.getName(),
                ((StoreAddress.InFolder) address).folder().toString())
            .redirectError(log.toFile())
            .start();
    List<String> acknowledged = new ArrayList<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String line = out.readLine();
      while (line != null) {
        if (line.endsWith(".")) {
          acknowledged.add(line.substring(0, line.length() - 1));
        }
        if (acknowledged.size() == before) {
          process.destroyForcibly();
        }
        line = readOrEnd(out);
      }
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(log)).isEqualTo(137);
    return acknowledged;
  }

  private static String readOrEnd(BufferedReader out) {
    try {
      return out.readLine();
    } catch (IOException problem) {
      return null;
    }
  }

  private static CourtEvent rally(String id) {
    return Examples.rally(id, Examples.FIRST, Side.A);
  }

  /** Stores rally after rally and writes the id of each, with a full stop, when it is stored. */
  static final class Storing {

    private Storing() {}

    public static void main(String[] arguments) {
      ClubStore store = ClubStore.open(StoreAddress.file(Path.of(arguments[0])));
      for (int n = 0; n < 1_000_000; n++) {
        String id = "kill-" + n;
        if (store.events().append(List.of(rally(id))).added() == 1) {
          System.out.println(id + ".");
          System.out.flush();
        }
      }
    }
  }
}
