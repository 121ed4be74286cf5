package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The long runs of {@link RunReliability} in short. That a page and a program of different age
 * understand each other or say so is tested beside the page ({@link PhonePageIT}).
 */
class ReliabilityIT {

  private static final long SEED = 1;
  private static final int KILLS = 5;
  private static final int SYNCS = 200;

  /** The server is killed beside the other tests: much of both is waiting. */
  private static final ExecutorService BESIDE = Executors.newSingleThreadExecutor();

  @TempDir private static Path killed;
  private static Future<KilledServer.Result> kills =
      CompletableFuture.failedFuture(new IllegalStateException("not begun"));

  @BeforeAll
  static void beginToKill() {
    kills = BESIDE.submit(() -> KilledServer.run(killed, KILLS, SEED, soFar -> {}));
  }

  @AfterAll
  static void endKilling() throws InterruptedException {
    BESIDE.shutdown();
    if (!BESIDE.awaitTermination(5, TimeUnit.MINUTES)) {
      throw new IllegalStateException("The kills do not end.");
    }
  }

  @Test
  void serverKilledUnderLoad_losesAndDoublesNothing() throws Exception {
    KilledServer.Result result = kills.get();
    assertThat(result.lost()).isZero();
    assertThat(result.doubled()).isZero();
    assertThat(result.stored()).isEqualTo(result.made()).isGreaterThan(20 * KILLS);
    assertThat(result.acknowledgedAtKills()).isGreaterThanOrEqualTo(20 * KILLS);
  }

  @Test
  void badNetwork_leadsToTheSameStateAsAGoodOne(@TempDir Path folder) throws Exception {
    SyncsOverBadNetwork.Result result = SyncsOverBadNetwork.run(folder, SYNCS, SEED, soFar -> {});
    assertThat(result.messages()).isGreaterThanOrEqualTo(SYNCS);
    assertThat(result.faults()).allSatisfy((fault, times) -> assertThat(times).isPositive());
    assertThat(result.faults()).hasSize(FaultyWay.Fault.values().length);
    assertThat(result.differing()).isZero();
  }

  @Test
  void serverWithoutRoom_isShownOnThePhone_andNothingIsLost(@TempDir Path folder) throws Exception {
    PhonesWithoutRoom.Result result = PhonesWithoutRoom.run(folder, FullDisk.limited(folder));
    assertThat(result.holds()).as(result.toString()).isTrue();
    FinishedProgram readOnly = PhonesWithoutRoom.startedReadOnly(folder);
    assertThat(readOnly.code()).isEqualTo(1);
    assertThat(readOnly.err()).contains("may only be read", "Make it writable").hasLineCount(1);
  }

  @Test
  void browserKilledInATap_keepsWhatItHadShown(@TempDir Path folder) throws Exception {
    KilledBrowser.Result result = KilledBrowser.run(folder, 2, SEED, soFar -> {});
    assertThat(result.kills()).isEqualTo(2);
    assertThat(result.shown()).isEqualTo(4);
    assertThat(result.lost()).isZero();
    assertThat(result.broken()).isZero();
  }
}
