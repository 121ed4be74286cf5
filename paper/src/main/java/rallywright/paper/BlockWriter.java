package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Direction;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Side;
import rallywright.paper.sheet.BlockView;
import rallywright.paper.sheet.CountCell;
import rallywright.paper.sheet.GameStretch;
import rallywright.paper.sheet.Mark;
import rallywright.paper.sheet.RoleLine;
import rallywright.paper.sheet.WarmUpLine;

/** Puts the blocks of one part of the sheet into words and pictures. */
final class BlockWriter {

  private static final int COUNTS_IN_A_ROW = 3;
  private static final int MOST_CUES = 4;

  private final SheetRequest request;
  private final FirstNames names;
  private final int mostInARow;
  private final BlockClock clock;
  private final ScoringWords scoring;

  BlockWriter(SheetRequest request, FirstNames names, int mostInARow) {
    this.request = request;
    this.names = names;
    this.mostInARow = mostInARow;
    this.clock = BlockClock.of(request.session());
    this.scoring = ScoringWords.of(request);
  }

  BlockView write(BlockGroup group, String id) {
    PlannedBlock block = group.head();
    Optional<Yardstick> yardstick = request.drills().yardsticks().apply(block.drill());
    if (block.kind() == PlannedBlock.Kind.YARDSTICK && yardstick.isPresent()) {
      return yardstick(group, yardstick.get(), id);
    }
    if (block.kind() == PlannedBlock.Kind.WARM_UP) {
      return warmUps(group, id);
    }
    Optional<Drill> drill = request.drills().drills().apply(block.drill());
    if (block.kind() == PlannedBlock.Kind.BREAK || (drill.isEmpty() && block.games().isEmpty())) {
      return plain(group, id);
    }
    return games(group, drill, id);
  }

  private BlockView games(BlockGroup group, Optional<Drill> drill, String id) {
    Set<Lane> lanes = new TreeSet<>();
    group.blocks().forEach(block -> lanes.addAll(GameRows.lanes(block)));
    boolean alone = group.blocks().size() == 1;
    return new BlockView(
        id,
        fromTo(group),
        title(group.head(), drill),
        lanes.isEmpty() ? minutes(group.head()) : alone ? direction(drill, lanes) : "",
        drill.map(each -> PrintableText.of(each.rule())).orElse(""),
        drill.map(each -> scoring.differing(each, lanes, group.blocks())).orElse(""),
        lanes.isEmpty() ? List.of() : drill.map(BlockWriter::roles).orElse(List.of()),
        drill.map(each -> DrawnCourts.of(each, lanes)).orElse(List.of()),
        stretches(group, drill),
        List.of(),
        List.of());
  }

  private List<GameStretch> stretches(BlockGroup group, Optional<Drill> drill) {
    Role solid =
        drill.flatMap(Drill::layout).map(layout -> layout.sides().a().role()).orElse(Role.EVEN);
    GameRows rows = new GameRows(names, request.session().plan().courts(), solid, mostInARow);
    List<GameStretch> stretches = new ArrayList<>();
    for (int place = 0; place < group.blocks().size(); place++) {
      PlannedBlock block = group.blocks().get(place);
      int inPlan = group.first() + place;
      String label =
          group.blocks().size() == 1
              ? ""
              : direction(drill, GameRows.lanes(block)) + ", " + clock.fromTo(inPlan, inPlan);
      if (!block.games().isEmpty()) {
        stretches.add(rows.of(block, label, notPlaying(block)));
      }
    }
    return stretches;
  }

  private BlockView yardstick(BlockGroup group, Yardstick yardstick, String id) {
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
    String sitting = sitting(group.head());
    return new BlockView(
        id,
        fromTo(group),
        PrintableText.of(yardstick.name()),
        yardstick.balls() + " balls each",
        PrintableText.of("Counts: " + yardstick.hit()),
        PrintableText.of(yardstick.setUp()),
        List.of(),
        DrawnCourts.of(yardstick),
        sitting.isEmpty() ? List.of() : List.of(GameStretch.sittingOnly(sitting)),
        rows,
        List.of());
  }

  private BlockView warmUps(BlockGroup group, String id) {
    List<WarmUpLine> lines = new ArrayList<>();
    for (PlannedBlock block : group.blocks()) {
      Optional<Drill> drill = request.drills().drills().apply(block.drill());
      lines.add(
          new WarmUpLine(
              minutes(block),
              title(block, drill),
              drill.map(each -> PrintableText.of(each.rule())).orElse(""),
              drill.map(each -> cues(each.advice().cues())).orElse(List.of())));
    }
    return new BlockView(
        id,
        fromTo(group),
        "Warm-up",
        "",
        "",
        "",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        lines);
  }

  private BlockView plain(BlockGroup group, String id) {
    PlannedBlock block = group.head();
    boolean rest = block.kind() == PlannedBlock.Kind.BREAK;
    return BlockView.plain(
        id,
        fromTo(group),
        rest ? "Break" : title(block, Optional.empty()),
        minutes(block) + (rest ? ": water, shade, and a look at the next block." : ""));
  }

  private String fromTo(BlockGroup group) {
    return clock.fromTo(group.first(), group.last());
  }

  private static String title(PlannedBlock block, Optional<Drill> drill) {
    return drill
        .map(each -> PrintableText.of(each.name()))
        .orElseGet(() -> block.drill().value().replace('-', ' '));
  }

  private static List<String> cues(List<String> cues) {
    return cues.stream().limit(MOST_CUES).map(PrintableText::of).toList();
  }

  private static String minutes(PlannedBlock block) {
    return Math.round(block.time().mean()) + " min";
  }

  private String direction(Optional<Drill> drill, Set<Lane> lanes) {
    return directions(lanes)
        + drill.map(each -> scoring.exceptRoundThePost(each, lanes)).orElse("");
  }

  private static String directions(Set<Lane> lanes) {
    if (lanes.containsAll(Lane.of(Direction.CROSS_EVEN))
        && lanes.containsAll(Lane.of(Direction.CROSS_ODD))
        && lanes.size() == 2) {
      return "cross-court";
    }
    return lanes.stream()
        .map(Lane::direction)
        .collect(Collectors.toCollection(TreeSet::new))
        .stream()
        .map(Direction::words)
        .collect(Collectors.joining(" and "));
  }

  private static List<RoleLine> roles(Drill drill) {
    if (drill.layout().filter(layout -> !layout.isEven()).isEmpty()) {
      return List.of();
    }
    BySide<DrillSide> sides = drill.layout().orElseThrow().sides();
    return Stream.of(Side.values())
        .map(
            side ->
                role(
                    sides.of(side),
                    side == Side.A ? Mark.SOLID : Mark.OUTLINED,
                    ScoringWords.starting(drill, side)))
        .toList();
  }

  private static RoleLine role(DrillSide side, Mark mark, String starting) {
    String advance = side.advance() == Advance.FREE ? "" : ", " + side.advance().words();
    return new RoleLine(mark, side.role().words() + advance + starting);
  }

  private String notPlaying(PlannedBlock block) {
    return Stream.of(sitting(block), away(block))
        .filter(each -> !each.isEmpty())
        .collect(Collectors.joining(". "));
  }

  /** Who has no part in a block because they come later or have left. */
  private String away(PlannedBlock block) {
    List<PlayerId> present = request.session().plan().present();
    List<PlayerId> away = new ArrayList<>(present);
    for (int turn = 1; turn <= block.sitting().size(); turn++) {
      away.retainAll(block.away(present, turn));
    }
    return block.games().isEmpty() || away.isEmpty() ? "" : "Not there: " + names.listed(away);
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
}
