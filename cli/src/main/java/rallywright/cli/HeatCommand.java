package rallywright.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.engine.practice.HeatCategory;
import rallywright.engine.practice.HeatIndex;
import rallywright.engine.quantity.Temperature;

/** The heat index and its category. */
@Command(
    name = "heat",
    description = {
      "How hot the air feels in the shade, and the published caution that goes with it.",
      "Edition: " + HeatIndex.EDITION + "; categories: " + HeatCategory.EDITION + "."
    },
    footer = {
      "",
      "Neither a rule nor medical advice: the rules of the place and of licensed practice come"
          + " first.",
      "",
      "Example: rallywright heat --temperature 32C --humidity 70"
    },
    mixinStandardHelpOptions = true)
final class HeatCommand implements Callable<Integer> {

  private static final Pattern DEGREES = Pattern.compile("([+-]?\\d{1,3}(?:\\.\\d{1,9})?)°?([CF])");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,9})?)%?");

  @Option(
      names = "--temperature",
      paramLabel = "DEGREES",
      description = "Air temperature with its unit: 32C or 90F, from -40C to 60C.")
  private @Nullable String temperature;

  @Option(
      names = "--humidity",
      paramLabel = "PERCENT",
      description = "Relative humidity in percent, 0 to 100.")
  private @Nullable String humidity;

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    HeatIndex index = HeatIndex.of(air(), percent());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonAnswer.print(out, asJson(index));
    } else {
      out.println(
          String.format(
              Locale.ROOT,
              "Feels like %.0f °F (%.0f °C) in the shade: %s.",
              index.fahrenheit(),
              index.celsius(),
              index.category().words()));
      out.println(index.category().advice());
      out.println(HeatCategory.ALWAYS);
      out.println("By the " + HeatIndex.EDITION + "; " + HeatCategory.EDITION + ".");
      out.flush();
    }
    return 0;
  }

  private static Map<String, Object> asJson(HeatIndex index) {
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("heatIndexF", index.fahrenheit());
    answer.put("heatIndexC", index.celsius());
    answer.put("category", index.category().words());
    answer.put("advice", index.category().advice() + " " + HeatCategory.ALWAYS);
    answer.put("edition", HeatIndex.EDITION + "; " + HeatCategory.EDITION);
    return answer;
  }

  private Temperature air() {
    String typed = needed("--temperature", temperature, "32C");
    Matcher parts = DEGREES.matcher(typed.strip().replace('−', '-').toUpperCase(Locale.ROOT));
    if (!parts.matches()) {
      throw new WrongInput(
          "The temperature (%s) must be a number with its unit, C or F. Maybe 32C or 90F."
              .formatted(typed));
    }
    double degrees = Double.parseDouble(parts.group(1));
    return parts.group(2).equals("C")
        ? Temperature.celsius(degrees)
        : Temperature.fahrenheit(degrees);
  }

  private double percent() {
    String typed = needed("--humidity", humidity, "70");
    Matcher parts = PERCENT.matcher(typed.strip());
    double percent = parts.matches() ? Double.parseDouble(parts.group(1)) : Double.NaN;
    if (!(percent >= 0 && percent <= 100)) {
      throw new WrongInput(
          "The humidity (%s) must be a number of percent from 0 to 100. Maybe 70."
              .formatted(typed));
    }
    if (percent > 0 && percent < 1) {
      throw new WrongInput(
          "The humidity (%s) must be in percent, and air so dry is not met. Maybe %s."
              .formatted(typed, Math.round(percent * 100)));
    }
    return percent;
  }

  private static String needed(String name, @Nullable String typed, String example) {
    if (typed == null) {
      throw new WrongInput(
          "The option %s is missing; it must be given. Maybe %s %s."
              .formatted(name, name, example));
    }
    return typed;
  }
}
