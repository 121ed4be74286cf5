package rallywright.paper;

import java.util.ArrayList;
import java.util.Collections;
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
import rallywright.paper.sheet.GameStretch;
import rallywright.paper.sheet.Mark;
import rallywright.paper.sheet.SeatLine;

/** The games of a block in the order in which they are played, as rows of cells. */
final class GameRows {

  /** The order of play: turn by turn, within a turn by court and lane. */
  static final Comparator<PlannedGame> ORDER_OF_PLAY =
      Comparator.comparingInt(PlannedGame::turn)
          .thenComparingInt(game -> game.place().court())
          .thenComparing(game -> game.place().lane());

  private final FirstNames names;
  private final int courts;
  private final Role solid;
  private final int mostInARow;

  /**
   * Rows of so many games side by side at the most, in which the solid block stands for the drill's
   * first role.
   */
  GameRows(FirstNames names, int courts, Role solid, int mostInARow) {
    this.names = names;
    this.courts = courts;
    this.solid = solid;
    this.mostInARow = mostInARow;
  }

  /**
   * The games of a block. Where every turn plays on the same two lanes or more, the places stand
   * over the columns and a row holds whole turns; else each cell names its own turn and place.
   */
  GameStretch of(PlannedBlock block, String label, String sitting) {
    List<PlannedGame> games = block.games().stream().sorted(ORDER_OF_PLAY).toList();
    List<GameCell> cells = games.stream().map(this::cell).toList();
    List<String> places = cells.stream().map(GameCell::place).distinct().toList();
    long turns = games.stream().mapToInt(PlannedGame::turn).distinct().count();
    boolean even =
        places.size() > 1 && places.size() <= mostInARow && games.size() == turns * places.size();
    if (!even) {
      return new GameStretch(label, 0, List.of(), rows(cells, mostInARow), sitting);
    }
    int turnsInARow = mostInARow / places.size();
    List<String> columns = new ArrayList<>();
    for (int turn = 0; turn < turnsInARow; turn++) {
      columns.addAll(turn < turns ? places : Collections.nCopies(places.size(), ""));
    }
    return new GameStretch(
        label, places.size(), columns, rows(cells, turnsInARow * places.size()), sitting);
  }

  private static List<List<GameCell>> rows(List<GameCell> cells, int inARow) {
    List<List<GameCell>> rows = new ArrayList<>();
    for (int from = 0; from < cells.size(); from += inARow) {
      rows.add(cells.subList(from, Math.min(cells.size(), from + inARow)));
    }
    return rows;
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
