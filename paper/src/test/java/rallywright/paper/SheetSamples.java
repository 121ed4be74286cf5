package rallywright.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes sample sheets into the build folder, to be looked at. */
final class SheetSamples {

  private static final Path FOLDER = Path.of("target", "samples");

  private SheetSamples() {}

  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FOLDER);
    write("four-a4", SampleSession.usual(4).request(), PaperSize.A4);
    write("five-letter", SampleSession.usual(5).request(), PaperSize.LETTER);
    write("eight-a4", SampleSession.usual(8).request(), PaperSize.A4);
    write(
        "two-letter",
        SampleSession.usual(2).request(PhoneAccess.Closed.ON_THIS_COMPUTER_ONLY, Origin.DEMO),
        PaperSize.LETTER);
  }

  private static void write(String name, SheetRequest request, PaperSize paper) throws IOException {
    long start = System.nanoTime();
    byte[] pdf = CourtSheet.pdf(request, paper);
    System.out.printf("%s %d ms%n", name, (System.nanoTime() - start) / 1_000_000);
    Files.write(FOLDER.resolve(name + ".pdf"), pdf);
  }
}
