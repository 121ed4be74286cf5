package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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

  @Test
  void serverKilledUnderLoad_losesAndDoublesNothing(@TempDir Path folder) throws Exception {
    KilledServer.Result result = KilledServer.run(folder, KILLS, SEED, soFar -> {});
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
