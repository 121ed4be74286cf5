package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.club.Limit;
import rallywright.engine.plan.PlannedBlock;

/** Sessions as the planner makes them from the drills that ship. */
class PlannedSheetTest {

  static Stream<Arguments> bookings() {
    return Stream.of(
            new int[] {2, 60, 1},
            new int[] {3, 90, 1},
            new int[] {4, 60, 1},
            new int[] {4, 90, 1},
            new int[] {5, 90, 1},
            new int[] {6, 90, 2},
            new int[] {7, 90, 2},
            new int[] {8, 60, 2},
            new int[] {8, 90, 2},
            new int[] {8, 100, 2})
        .flatMap(
            booking ->
                Stream.of(PaperSize.values())
                    .map(paper -> Arguments.of(booking[0], booking[1], booking[2], paper)));
  }

  /** Four with limits and three without, so that games are spread unevenly. */
  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void sessionWithManyLimits_fitsOnOnePageToo(PaperSize paper) throws IOException {
    Map<Integer, Limit> limits =
        Map.of(
            0,
            Limit.NO_OVERHEADS,
            2,
            Limit.NO_RUNNING_BACK,
            4,
            Limit.NO_OVERHEADS,
            6,
            Limit.EASY_ONLY);
    SheetRequest request = PlannedSessions.of(7, 90, 2, limits);
    try (PrintedPage page = new PrintedPage(CourtSheet.pdf(request, paper))) {
      assertThat(page.pages()).isEqualTo(1);
      SheetLaws.assertNothingClipped(page, paper);
      SheetLaws.assertEveryGameIsThere(page, request);
    }
  }

  @ParameterizedTest
  @MethodSource("bookings")
  void plannedSession_fitsOnOnePage_withEveryGameAndDrill(
      int players, int minutes, int courts, PaperSize paper) throws IOException {
    SheetRequest request = PlannedSessions.of(players, minutes, courts);
    try (PrintedPage page = new PrintedPage(CourtSheet.pdf(request, paper))) {
      assertThat(page.pages()).isEqualTo(1);
      SheetLaws.assertNothingClipped(page, paper);
      SheetLaws.assertEveryGameIsThere(page, request);
      String text = page.text().replaceAll("\\s+", " ");
      for (PlannedBlock block : request.session().plan().blocks()) {
        request
            .drills()
            .drills()
            .apply(block.drill())
            .ifPresent(drill -> assertThat(text).contains(drill.name()));
      }
    }
  }
}
