package rallywright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Flights as a table for people, in metres and seconds. */
final class FlightTable {

  private static final String ROW = "%-32s %8s %8s %8s %8s %8s %8s %8s%n";

  private FlightTable() {}

  static void print(PrintWriter out, List<FlightCommand.Case> cases) {
    out.printf(Locale.ROOT, ROW, "", "net", "", "", "landing", "", "", "");
    out.printf(Locale.ROOT, ROW, "ball", "s", "left m", "high m", "s", "beyond m", "left m", "m/s");
    for (FlightCommand.Case one : cases) {
      out.printf(
          Locale.ROOT,
          ROW,
          one.name(),
          number(one.netTime_s()),
          number(one.netY_m()),
          number(one.netZ_m()),
          number(one.landTime_s()),
          number(one.landX_m()),
          number(one.landY_m()),
          number(one.landSpeed_mps()));
    }
    out.flush();
  }

  private static String number(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.3f", value);
  }
}
