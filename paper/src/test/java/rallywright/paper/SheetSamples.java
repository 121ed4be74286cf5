package rallywright.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import rallywright.engine.court.Lane;
import rallywright.paper.sheet.IntervalBar;
import rallywright.paper.sheet.PlayerHandout;

/** Writes sample sheets into the build folder, to be looked at. */
final class SheetSamples {

  private static final Path FOLDER = Path.of("target", "samples");

  private SheetSamples() {}

  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FOLDER);
    for (PaperSize paper : PaperSize.values()) {
      String on = "-" + paper.name().toLowerCase(Locale.ROOT);
      write("planned-8-90-2" + on, PlannedSessions.of(8, 90, 2), paper);
      write("planned-8-100-2" + on, PlannedSessions.of(8, 100, 2), paper);
      write("planned-5-90-1" + on, PlannedSessions.of(5, 90, 1), paper);
      write("planned-4-60-1" + on, PlannedSessions.of(4, 60, 1), paper);
    }
    write("four-a4", SampleSession.usual(4).request(), PaperSize.A4);
    write("five-letter", SampleSession.usual(5).request(), PaperSize.LETTER);
    write("eight-a4", SampleSession.usual(8).request(), PaperSize.A4);
    write(
        "two-letter",
        SampleSession.usual(2).request(PhoneAccess.Closed.ON_THIS_COMPUTER_ONLY, Origin.DEMO),
        PaperSize.LETTER);
    Files.write(FOLDER.resolve("player-a4.pdf"), PlayerPage.pdf(handout(), PaperSize.A4));
    SampleSession many = SampleSession.usual(8);
    for (int block = 0; block < 4; block++) {
      many.drill(SampleDrills.DROP, 10, 4, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    }
    write("many-a4", many.request(), PaperSize.A4);
  }

  static PlayerHandout handout() {
    return new PlayerHandout(
        "Imke",
        "24 November 2026",
        Origin.DEMO.sentence(),
        new PlayerHandout.Scale("even with a 3.0 player", "even with a 4.0 player"),
        List.of(
            new PlayerHandout.SkillLine(
                "Drop",
                "About 6 rallies in 10 against an even partner; sure within 1.",
                new IntervalBar(0.4, 0.62, 0.8)),
            new PlayerHandout.SkillLine(
                "Reset", "Too early to tell.", new IntervalBar(0.05, 0.5, 0.95))),
        List.of(
            new PlayerHandout.GameLine("17 November", "Drop game, back, with Rafe", "3-5", "2-5"),
            new PlayerHandout.GameLine("24 November", "Dink game with Juno", "5-2", "5-4")),
        List.of("Play the reset game: it tells most in the least time."));
  }

  private static void write(String name, SheetRequest request, PaperSize paper) throws IOException {
    long start = System.nanoTime();
    byte[] pdf = CourtSheet.pdf(request, paper);
    System.out.printf("%s %d ms%n", name, (System.nanoTime() - start) / 1_000_000);
    Files.write(FOLDER.resolve(name + ".pdf"), pdf);
  }
}
