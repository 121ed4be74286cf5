package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.archive.ClubExport;
import rallywright.store.archive.ClubImport;
import rallywright.store.archive.ImportInto;

class DayBookIT {

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void day_isKeptReplacedAndTakenAway(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      assertThat(store.days().all()).containsExactly(Examples.day());
      SavedDay later =
          new SavedDay(
              "day-1", "Other name", Examples.day().date().plusDays(1), null, Examples.day().day());
      store.days().save(later);
      assertThat(store.days().find("day-1")).contains(later);
      store.days().remove("day-1");
      assertThat(store.days().all()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void person_erasedWithAllGames_isANumberInTheDay_alsoAfterAnOlderExportComesBack(
      TestDatabase database) {
    Path file = folder.resolve(database + ".zip");
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      ClubExport.write(store, file);
      store.players().erase(Examples.IVO.id(), ErasedGames.REMOVE);
      assertThat(store.days().all()).hasSize(1).noneMatch(DayBookIT::namesIvo);
      assertThat(store.days().all().get(0).day().rounds().get(0).matches().get(0).b())
          .containsExactly(new PlayerId("nobody-1"), Examples.WALK_IN.id());
      ClubImport.read(file, store, ImportInto.MERGED_BY_ID);
      assertThat(store.days().all()).hasSize(1).noneMatch(DayBookIT::namesIvo);
    }
  }

  private static boolean namesIvo(SavedDay day) {
    return day.named().contains(Examples.IVO.id());
  }

  @ParameterizedTest
  @EnumSource
  void walkIn_merged_standsInTheDayAsThePlayer_unlessBothPlayed(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      Player roona = Examples.player("p-roona", "Roona Vell", Standing.ACTIVE);
      store.players().save(roona);
      PlayerId walkIn = Examples.WALK_IN.id();
      assertThatThrownBy(() -> store.players().merge(walkIn, Examples.IVO.id()))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("Sunday games");
      store.players().merge(walkIn, roona.id());
      assertThat(store.days().all().get(0).day().wish().players())
          .extracting(RotationPlayer::id)
          .contains(roona.id())
          .doesNotContain(walkIn);
    }
  }
}
