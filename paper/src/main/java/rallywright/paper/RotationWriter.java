package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationRound;
import rallywright.paper.rotation.RotationView;
import rallywright.paper.rotation.RotationView.Cell;
import rallywright.paper.rotation.RotationView.Names;
import rallywright.paper.rotation.RotationView.Row;
import rallywright.paper.rotation.TypeSize;

/** Puts a rotation into the cells of its sheet. */
final class RotationWriter {

  /** The white edge that every printer can keep. */
  static final double EDGE_MM = 8;

  /** The width of the numbers of the rounds. */
  static final double NUMBER_MM = 9;

  /** More rounds go on over pages. */
  static final int ROUNDS_ON_A_PAGE = 14;

  private static final double HEAD_MM = 16;
  private static final double FOOT_MM = 7;
  private static final double HIGHEST_ROW_MM = 20;
  private static final double LEAST_SITTING_MM = 24;
  private static final double MOST_SITTING_MM = 62;
  private static final double MM_PER_SITTING_NAME = 12;
  private static final double CELL_PADDING_MM = 3;

  /** A head start in its box takes as much room as so many letters. */
  private static final int HEAD_START_LETTERS = 4;

  /** So large a share of the lines has the usual size; longer ones are set smaller. */
  private static final double USUAL_SHARE = 0.75;

  private final RotationRequest request;
  private final double widthMm;
  private final List<RotationRound> rounds;
  private final RotationRound longest;
  private final int mostSitting;
  private final int roundsOnAPage;
  private final double rowMm;
  private final double usualPt;

  RotationWriter(RotationRequest request, PaperSize paper) {
    this.request = request;
    widthMm = paper.longEdgeMm() - 2 * EDGE_MM;
    rounds = request.schedule().rounds();
    longest =
        rounds.stream()
            .max((one, other) -> one.matches().size() - other.matches().size())
            .orElseThrow(() -> new IllegalArgumentException("A rotation has at least one round."));
    mostSitting = rounds.stream().mapToInt(round -> round.sitting().size()).max().orElse(0);
    int pages = (rounds.size() + ROUNDS_ON_A_PAGE - 1) / ROUNDS_ON_A_PAGE;
    roundsOnAPage = (rounds.size() + pages - 1) / pages;
    double room = paper.shortEdgeMm() - 2 * EDGE_MM - HEAD_MM - FOOT_MM;
    rowMm = Math.min(HIGHEST_ROW_MM, room / roundsOnAPage);
    usualPt = usualPt();
  }

  private double usualPt() {
    int[] letters =
        rounds.stream()
            .flatMap(round -> round.matches().stream())
            .flatMap(match -> Stream.of(match.a(), match.b()))
            .filter(side -> !side.isEmpty())
            .mapToInt(side -> joined(side, " + ").length())
            .sorted()
            .toArray();
    if (letters.length == 0) {
      return TypeSize.LARGEST_PT;
    }
    int usual = letters[(int) (USUAL_SHARE * (letters.length - 1))];
    return new TypeSize(columnMm(), rowMm).points(usual, 2);
  }

  double rowMm() {
    return rowMm;
  }

  double sittingMm() {
    double wanted = Math.sqrt(mostSitting) * MM_PER_SITTING_NAME + 6;
    return mostSitting == 0 ? 0 : Math.min(MOST_SITTING_MM, Math.max(LEAST_SITTING_MM, wanted));
  }

  private double columnMm() {
    return (widthMm - NUMBER_MM - sittingMm()) / Math.max(1, longest.matches().size())
        - CELL_PADDING_MM;
  }

  RotationView view() {
    List<RotationView.Page> pages = new ArrayList<>();
    for (int from = 0; from < rounds.size(); from += roundsOnAPage) {
      List<RotationRound> some =
          rounds.subList(from, Math.min(rounds.size(), from + roundsOnAPage));
      pages.add(new RotationView.Page(pages.size() + 1, some.stream().map(this::row).toList()));
    }
    return new RotationView(
        PrintableText.of(request.title()),
        PrintableText.of(request.when()),
        request.origin().sentence(),
        longest.matches().stream().map(this::head).toList(),
        mostSitting == 0 ? RotationView.Seating.ALL_PLAY : RotationView.Seating.SOME_SIT,
        pages,
        foot());
  }

  private String head(RotationMatch match) {
    boolean narrow = columnMm() < 18;
    if (request.game().perCourt() == 1) {
      return narrow ? String.valueOf(match.court()) : "Court " + match.court();
    }
    String lane = match.lane() == 1 ? "left" : "right";
    return narrow ? match.court() + " " + lane : "Court " + match.court() + " " + lane;
  }

  private Row row(RotationRound round) {
    List<Cell> cells = new ArrayList<>();
    for (int place = 0; place < longest.matches().size(); place++) {
      cells.add(
          place < round.matches().size()
              ? cell(round.matches().get(place))
              : new Cell(names(List.of(), 0, 1), names(List.of(), 0, 1)));
    }
    String sitting = joined(round.sitting(), ", ");
    TypeSize size = new TypeSize(sittingMm() - CELL_PADDING_MM, rowMm);
    return new Row(
        round.number(),
        cells,
        new Names(sitting, "", TypeSize.style(size.pointsOfList(sitting.length()))));
  }

  private Cell cell(RotationMatch match) {
    HeadStart start = match.headStart();
    int lines = match.b().isEmpty() ? 1 : 2;
    return new Cell(names(match.a(), start.a(), lines), names(match.b(), start.b(), lines));
  }

  private Names names(List<PlayerId> players, int headStart, int lines) {
    String text = joined(players, " + ");
    int letters = text.length() + (headStart == 0 ? 0 : HEAD_START_LETTERS);
    double points = Math.min(usualPt, new TypeSize(columnMm(), rowMm).points(letters, lines));
    return new Names(text, headStart == 0 ? "" : "+" + headStart, TypeSize.style(points));
  }

  private String joined(List<PlayerId> players, String between) {
    return players.stream()
        .map(player -> PrintableText.of(request.names().getOrDefault(player, "?")))
        .collect(Collectors.joining(between));
  }

  private List<String> foot() {
    List<String> foot = new ArrayList<>();
    foot.add("The number is the round. The upper line serves first.");
    boolean headStarts =
        rounds.stream()
            .flatMap(round -> round.matches().stream())
            .anyMatch(match -> match.headStart().a() + match.headStart().b() > 0);
    if (headStarts) {
      foot.add("+2 in a box: starts with 2 points.");
    }
    boolean open =
        rounds.stream()
            .flatMap(round -> round.matches().stream())
            .anyMatch(match -> match.players().isEmpty());
    if (open) {
      foot.add("Empty rounds follow from the scores: winners up a court, losers down.");
    } else if (request.game().form() == RotationGame.Form.PAIRS
        && request.schedule().measures().partnerRepeats() == 0) {
      foot.add("Nobody has the same partner twice.");
    }
    foot.add("A ball from another court: all call “ball” and stop. Stop at pain.");
    return foot;
  }
}
