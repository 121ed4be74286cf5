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
      row(
          out,
          one.name(),
          one.netTime_s(),
          one.netY_m(),
          one.netZ_m(),
          one.landTime_s(),
          one.landX_m(),
          one.landY_m(),
          one.landSpeed_mps());
      end(out, "  four balls in five from", one.fourInFive(), 0);
      end(out, "  to", one.fourInFive(), 1);
    }
    out.flush();
  }

  private static void end(PrintWriter out, String name, FlightCommand.Ends ends, int which) {
    row(
        out,
        name,
        end(ends.netTime_s(), which),
        end(ends.netY_m(), which),
        end(ends.netZ_m(), which),
        end(ends.landTime_s(), which),
        end(ends.landX_m(), which),
        end(ends.landY_m(), which),
        end(ends.landSpeed_mps(), which));
  }

  private static @Nullable Double end(@Nullable List<Double> range, int which) {
    return range == null ? null : range.get(which);
  }

  private static void row(PrintWriter out, String name, @Nullable Double... numbers) {
    Object[] cells = new Object[1 + numbers.length];
    cells[0] = name;
    for (int i = 0; i < numbers.length; i++) {
      cells[1 + i] = number(numbers[i]);
    }
    out.printf(Locale.ROOT, ROW, cells);
  }

  private static String number(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.3f", value);
  }
}
