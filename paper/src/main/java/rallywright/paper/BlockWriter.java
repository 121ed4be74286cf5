package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Direction;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.score.RoundThePost;
import rallywright.paper.sheet.BlockView;
import rallywright.paper.sheet.CountCell;
import rallywright.paper.sheet.Mark;
import rallywright.paper.sheet.RoleLine;

/** Puts one block of a plan into words and pictures. */
final class BlockWriter {

  private static final int COUNTS_IN_A_ROW = 3;
  private static final int MOST_CUES = 4;

  private final SheetRequest request;
  private final FirstNames names;

  BlockWriter(SheetRequest request, FirstNames names) {
    this.request = request;
    this.names = names;
  }

  BlockView write(PlannedBlock block, String id, String clock) {
    Optional<Yardstick> yardstick = request.drills().yardsticks().apply(block.drill());
    if (block.kind() == PlannedBlock.Kind.YARDSTICK && yardstick.isPresent()) {
      return yardstick(block, yardstick.get(), id, clock);
    }
    Optional<Drill> drill = request.drills().drills().apply(block.drill());
    if (block.kind() == PlannedBlock.Kind.BREAK || drill.isEmpty()) {
      return plain(block, id, clock);
    }
    return drill(block, drill.get(), id, clock);
  }

  private BlockView drill(PlannedBlock block, Drill drill, String id, String clock) {
    Set<Lane> lanes = GameRows.lanes(block);
    boolean played = !lanes.isEmpty();
    return new BlockView(
        id,
        clock,
        PrintableText.of(drill.name()),
        played ? directions(lanes) : minutes(block),
        PrintableText.of(drill.rule()),
        drill.scored().map(game -> scoring(game, block, lanes)).orElse(""),
        played ? drill.layout().map(BlockWriter::roles).orElse(List.of()) : List.of(),
        played ? DrawnCourts.of(drill, lanes) : List.of(),
        new GameRows(
                names,
                request.session().plan().courts(),
                drill.layout().map(layout -> layout.sides().a().role()).orElse(Role.EVEN))
            .of(block),
        List.of(),
        sitting(block),
        played ? List.of() : cues(drill.advice().cues()));
  }

  private BlockView yardstick(PlannedBlock block, Yardstick yardstick, String id, String clock) {
    List<List<CountCell>> rows = new ArrayList<>();
    List<CountCell> row = new ArrayList<>();
    for (PlayerId player : request.session().plan().present()) {
      if (row.size() == COUNTS_IN_A_ROW) {
        rows.add(row);
        row = new ArrayList<>();
      }
      row.add(new CountCell(names.of(player), "of " + yardstick.balls()));
    }
    rows.add(row);
    return new BlockView(
        id,
        clock,
        PrintableText.of(yardstick.name()),
        yardstick.balls() + " balls each",
        PrintableText.of("Counts: " + yardstick.hit()),
        PrintableText.of(yardstick.setUp()),
        List.of(),
        DrawnCourts.of(yardstick),
        List.of(),
        rows,
        sitting(block),
        List.of());
  }

  private BlockView plain(PlannedBlock block, String id, String clock) {
    boolean rest = block.kind() == PlannedBlock.Kind.BREAK;
    return new BlockView(
        id,
        clock,
        rest ? "Break" : block.drill().value().replace('-', ' '),
        minutes(block),
        rest ? "Water, shade, and a look at the next block." : "",
        "",
        List.of(),
        List.of(),
        new GameRows(names, request.session().plan().courts(), Role.EVEN).of(block),
        List.of(),
        sitting(block),
        List.of());
  }

  private static List<String> cues(List<String> cues) {
    return cues.stream().limit(MOST_CUES).map(PrintableText::of).toList();
  }

  private static String minutes(PlannedBlock block) {
    return Math.round(block.time().mean()) + " min";
  }

  private static String directions(Set<Lane> lanes) {
    if (lanes.containsAll(Lane.of(Direction.CROSS_EVEN))
        && lanes.containsAll(Lane.of(Direction.CROSS_ODD))
        && lanes.size() == 2) {
      return "cross-court, even and odd side";
    }
    return lanes.stream()
        .map(Lane::direction)
        .collect(Collectors.toCollection(TreeSet::new))
        .stream()
        .map(Direction::words)
        .collect(Collectors.joining(" and "));
  }

  private static String scoring(DrillForm.Scored game, PlannedBlock block, Set<Lane> lanes) {
    StringBuilder words = new StringBuilder(firstUpper(game.format().label())).append('.');
    if (game.serving() == Serving.FEED) {
      words.append(" Feed: ").append(game.feed().by().words()).append('.');
    } else {
      words.append(' ').append(firstUpper(game.serving().words())).append('.');
    }
    boolean roundThePost =
        lanes.stream()
            .anyMatch(
                lane -> game.roundThePostIn(lane.direction()) == RoundThePost.LEGAL_ON_FULL_COURT);
    if (roundThePost) {
      words.append(" A legal ball round the post wins the rally.");
    }
    if (block.end() == PlannedBlock.End.BY_CLOCK) {
      words.append(" At the horn the score stands.");
    }
    return words.toString();
  }

  private static List<RoleLine> roles(Layout layout) {
    if (layout.isEven()) {
      return List.of();
    }
    return List.of(role(layout.sides().a(), Mark.SOLID), role(layout.sides().b(), Mark.OUTLINED));
  }

  private static RoleLine role(DrillSide side, Mark mark) {
    String advance = side.advance() == Advance.FREE ? "" : ", " + side.advance().words();
    return new RoleLine(mark, side.role().words() + advance);
  }

  private String sitting(PlannedBlock block) {
    List<String> turns = new ArrayList<>();
    List<List<PlayerId>> sitting = block.sitting();
    boolean alwaysTheSame = sitting.stream().distinct().count() == 1;
    if (alwaysTheSame && !sitting.get(0).isEmpty()) {
      return "Sits out: " + names.listed(sitting.get(0));
    }
    for (int turn = 0; turn < sitting.size(); turn++) {
      if (!sitting.get(turn).isEmpty()) {
        turns.add((turn + 1) + " " + names.listed(sitting.get(turn)));
      }
    }
    return turns.isEmpty() ? "" : "Sits out: " + String.join(" · ", turns);
  }

  private static String firstUpper(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
