package rallywright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import rallywright.engine.plan.PlanAnswer;

/** A plan for people: the clock, then each block with its games and its reason. */
final class PlanTable {

  private PlanTable() {}

  static void print(PrintWriter out, PlanAnswer.Planned planned, PlanJson plan) {
    out.println(planned.check().clock().words());
    out.println(planned.check().gapWords());
    plan.warnings().forEach(out::println);
    plan.notes().forEach(out::println);
    for (int i = 0; i < plan.blocks().size(); i++) {
      PlanJson.Block block = plan.blocks().get(i);
      out.println();
      out.printf(
          Locale.ROOT,
          "%d. %s%s: about %.0f min%n",
          i + 1,
          block.drill(),
          way(block),
          block.minutesMean());
      out.println("   " + plan.reasons().get(i));
      block.lanes().forEach(lane -> lane.games().forEach(game -> line(out, lane, game)));
      for (int turn = 0; turn < block.sitting().size(); turn++) {
        list(out, turn + 1, "sits out", block.sitting().get(turn));
        list(out, turn + 1, "is not there", block.away().get(turn));
      }
    }
    out.flush();
  }

  private static String way(PlanJson.Block block) {
    return block.direction() == null ? "" : ", " + block.direction() + ", " + block.roles();
  }

  private static void line(PrintWriter out, PlanJson.LaneGames lane, PlanJson.Game game) {
    out.printf(
        Locale.ROOT,
        "   Court %d, %-14s turn %d: %s (%s) v %s (%s)%s%n",
        lane.court(),
        lane.lane(),
        game.turn(),
        String.join(" and ", game.a()),
        game.roleA(),
        String.join(" and ", game.b()),
        game.roleB(),
        game.headStartA() + game.headStartB() == 0
            ? ""
            : ", from %d-%d".formatted(game.headStartA(), game.headStartB()));
  }

  private static void list(PrintWriter out, int turn, String what, List<String> names) {
    if (!names.isEmpty()) {
      out.printf("   Turn %d %s: %s%n", turn, what, String.join(", ", names));
    }
  }
}
