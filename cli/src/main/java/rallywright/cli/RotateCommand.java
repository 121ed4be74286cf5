package rallywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationAnswer;
import rallywright.engine.rotation.RotationSchedule;
import rallywright.engine.rotation.RotationSearch;
import rallywright.engine.rotation.RotationTime;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SearchEffort;
import rallywright.engine.rotation.SearchWatch;
import rallywright.paper.Origin;
import rallywright.paper.PaperSize;
import rallywright.paper.RotationRequest;
import rallywright.paper.RotationSheet;

/** Who plays whom on which court, round after round. */
@Command(
    name = "rotate",
    description = {
      "Who plays whom on which court: new partners, new opponents, even matches, even sit-outs.",
      "The same options give the same rotation."
    },
    footer = {
      "",
      "Players are numbered from 1. With --json: partnerRepeats counts partners (on lanes: those"
          + " who share a lane) after their first time; opponentExcess counts opponents met"
          + " beyond the even share, rounded up; worstDifference is the largest difference of two"
          + " sides in logits, of partners the mean. Lanes count from 1; null is a whole court."
          + " minutes: what all rounds take without a horn, on average and nine times in ten.",
      "",
      "Example: rallywright rotate --players 13 --courts 3 --rounds 8 --apart 2-9"
    },
    mixinStandardHelpOptions = true)
final class RotateCommand implements Callable<Integer> {

  @Option(names = "--players", paramLabel = "N", description = "How many play, 1 to 40.")
  private @Nullable String players;

  @Option(names = "--courts", paramLabel = "C", description = "Courts at hand, 1 to 12.")
  private @Nullable String courts;

  @Option(names = "--rounds", paramLabel = "R", description = "Rounds, 1 to 60.")
  private @Nullable String rounds;

  @Option(
      names = "--game",
      paramLabel = "GAME",
      description = "doubles, or lanes (two against each other, two lanes a court).")
  private String game = "doubles";

  @Option(
      names = "--partners",
      paramLabel = "HOW",
      description = {
        "new: new partners every round. fixed: 1 with 2, 3 with 4, …; each pair plays each.",
        "couples: man 1 and woman 2, man 3 and woman 4, …; everybody plays with and against the"
            + " others. Default: new."
      })
  private String partners = "new";

  @Option(
      names = "--strengths",
      paramLabel = "A,B,…",
      description = "One strength in logits for each player; then matches are made even.")
  private @Nullable String strengths;

  @Option(
      names = "--apart",
      paramLabel = "A-B",
      split = ",",
      description = "Pairs that must not meet, for example 1-5,2-9.")
  private List<String> apart = List.of();

  @Option(
      names = "--together",
      paramLabel = "A-B",
      split = ",",
      description = "Pairs that must be partners whenever they play, for example 3-4.")
  private List<String> together = List.of();

  @Option(names = "--seed", paramLabel = "S", description = "Any whole number. Default: 1.")
  private String seed = "1";

  @Option(names = "--thorough", description = "Search about ten times as long.")
  private boolean thorough;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Write the sheet for the fence into a new file, A4.")
  private @Nullable Path pdf;

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    if (pdf != null) {
      NewFile.check(pdf);
    }
    RotationWish wish =
        new RotateFlags(
                new RotateFlags.Counts(players, courts, rounds, seed),
                game,
                strengths,
                new RotateFlags.Pairs(apart, together))
            .wish();
    RotationSchedule schedule = schedule(wish, RotateFlags.style(partners));
    if (pdf != null) {
      Files.write(pdf, RotationSheet.pdf(request(wish, schedule), PaperSize.A4));
    }
    PrintWriter out = spec.commandLine().getOut();
    RotationTime time = RotationTime.of(wish, schedule);
    if (json) {
      JsonAnswer.print(out, RotationJson.of(wish.game(), schedule, time));
    } else {
      RotationLines.print(out, wish.game(), schedule, time);
    }
    return 0;
  }

  private RotationSchedule schedule(RotationWish wish, DayStyle style) {
    if (style != DayStyle.NEW_PARTNERS) {
      return day(wish, style);
    }
    SearchEffort effort = thorough ? SearchEffort.THOROUGH : SearchEffort.USUAL;
    PrintWriter err = spec.commandLine().getErr();
    RotationAnswer answer;
    try (ProgressBar bar = new ProgressBar(err, "Searching", ProgressBar.Screen.here())) {
      answer =
          RotationSearch.find(
              wish,
              effort,
              progress -> {
                bar.at(progress.share());
                return SearchWatch.Verdict.GO_ON;
              });
    }
    if (answer instanceof RotationAnswer.Refused refused) {
      throw new WrongInput(String.join(" ", refused.sentences()));
    }
    return ((RotationAnswer.Found) answer).schedule();
  }

  private static RotationSchedule day(RotationWish wish, DayStyle style) {
    DayWish asked =
        new DayWish(
            style,
            wish.game(),
            wish.courts(),
            wish.rounds(),
            wish.players(),
            wish.apart(),
            wish.together(),
            wish.seed());
    DayAnswer answer = PlayDay.start(asked);
    if (answer instanceof DayAnswer.Refused refused) {
      throw new WrongInput(String.join(" ", refused.sentences()));
    }
    PlayDay day = ((DayAnswer.Ready) answer).day();
    return new RotationSchedule(day.rounds(), day.measures());
  }

  private static RotationRequest request(RotationWish wish, RotationSchedule schedule) {
    Map<PlayerId, String> names = new HashMap<>();
    wish.players().forEach(player -> names.put(player.id(), player.id().value()));
    return new RotationRequest("Rotation", "", wish.game(), schedule, names, Origin.OWN_CLUB);
  }
}
