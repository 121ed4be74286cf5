package rallywright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.paper.sheet.GameCell;
import rallywright.paper.sheet.Mark;
import rallywright.paper.sheet.SeatLine;

/** The games of a block in the order in which they are played, as rows of cells. */
final class GameRows {

  /** The order of play: turn by turn, within a turn by court and lane. */
  static final Comparator<PlannedGame> ORDER_OF_PLAY =
      Comparator.comparingInt(PlannedGame::turn)
          .thenComparingInt(game -> game.place().court())
          .thenComparing(game -> game.place().lane());

  /** Cells side by side that leave room for a name and a box to write in. */
  private static final int MOST_IN_A_ROW = 4;

  private final FirstNames names;
  private final int courts;
  private final Role solid;

  /** Rows in which the solid block stands for the drill's first role. */
  GameRows(FirstNames names, int courts, Role solid) {
    this.names = names;
    this.courts = courts;
    this.solid = solid;
  }

  /**
   * The rows of a block. All games of a turn stand side by side where they fit; a row holds whole
   * turns.
   */
  List<List<GameCell>> of(PlannedBlock block) {
    List<PlannedGame> games = block.games().stream().sorted(ORDER_OF_PLAY).toList();
    if (games.isEmpty()) {
      return List.of();
    }
    List<List<GameCell>> rows = new ArrayList<>();
    List<GameCell> row = new ArrayList<>();
    int perRow = cellsPerRow(games);
    for (PlannedGame game : games) {
      if (row.size() == perRow) {
        rows.add(row);
        row = new ArrayList<>();
      }
      row.add(cell(game));
    }
    rows.add(row);
    return rows;
  }

  /** Whole turns in a row: three for three lanes, else four. */
  private static int cellsPerRow(List<PlannedGame> games) {
    long lanes =
        games.stream()
            .collect(Collectors.groupingBy(PlannedGame::turn, Collectors.counting()))
            .values()
            .stream()
            .mapToLong(Long::longValue)
            .max()
            .orElse(1);
    return lanes == MOST_IN_A_ROW - 1 ? MOST_IN_A_ROW - 1 : MOST_IN_A_ROW;
  }

  private GameCell cell(PlannedGame game) {
    return new GameCell(
        String.valueOf(game.turn()),
        place(game.place()),
        seat(game.a(), markOf(game.a(), Mark.SOLID), game.headStart().a()),
        seat(game.b(), markOf(game.b(), Mark.OUTLINED), game.headStart().b()));
  }

  /** In an even drill the near side is solid; else whoever has the drill's first role. */
  private Mark markOf(Seat seat, Mark whereEven) {
    if (seat.role() == Role.EVEN) {
      return whereEven;
    }
    return seat.role() == solid ? Mark.SOLID : Mark.OUTLINED;
  }

  private SeatLine seat(Seat seat, Mark mark, int headStart) {
    return new SeatLine(mark, names.listed(seat.players()), headStart == 0 ? "" : "+" + headStart);
  }

  private String place(CourtLane place) {
    String lane =
        switch (place.lane()) {
          case STRAIGHT_LEFT -> "left";
          case STRAIGHT_RIGHT -> "right";
          case CROSS_EVEN -> "even";
          case CROSS_ODD -> "odd";
        };
    if (courts == 1) {
      return lane + (place.lane().direction().isCross() ? " side" : " lane");
    }
    return "court " + place.court() + " " + lane;
  }

  /** The lanes that a block uses on any of its courts, in the order of the court from the left. */
  static Set<Lane> lanes(PlannedBlock block) {
    return block.games().stream()
        .map(game -> game.place().lane())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
