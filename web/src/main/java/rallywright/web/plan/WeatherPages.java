package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import java.util.OptionalDouble;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.session.SessionId;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;
import rallywright.web.weather.ExpectedWeather;
import rallywright.web.weather.WeatherBook;
import rallywright.web.weather.WeatherWords;

/** The weather that is expected for a session outdoors, and the published caution with it. */
@Controller
final class WeatherPages {

  private static final AllowedNumber HUMIDITY =
      new AllowedNumber("The humidity in percent", 0, 100, "Maybe 60.");

  private final SessionDesk sessions;
  private final WeatherBook book;
  private final PageFrames frames;

  WeatherPages(SessionDesk sessions, WeatherBook book, PageFrames frames) {
    this.sessions = sessions;
    this.book = book;
    this.frames = frames;
  }

  @GetMapping("/sessions/{id}/weather")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    OpenSession open = open(id);
    ExpectedWeather expected = book.of(open.session().id());
    Scales scales = Scales.of(frame(request).units());
    Form form =
        Form.empty()
            .with("temperature", plain(expected.celsius(), scales.perCelsius(), scales.zero()))
            .with("humidity", plain(expected.humidityPercent(), 1, 0))
            .with("wind", plain(expected.windMetresPerSecond(), 1 / scales.metresPerSecond(), 0));
    return show(open, form, request, model);
  }

  @PostMapping("/sessions/{id}/weather")
  String keep(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    OpenSession open = open(id);
    FormReader in = FormReader.of(request);
    Scales scales = Scales.of(frame(request).units());
    OptionalDouble degrees = in.number("temperature", scales.temperature());
    OptionalDouble humidity = in.number("humidity", HUMIDITY);
    OptionalDouble wind = in.number("wind", scales.wind());
    if (in.failed()) {
      response.setStatus(422);
      return show(open, in.form(), request, model);
    }
    book.keep(
        open.session().id(),
        new ExpectedWeather(
            changed(degrees, 1 / scales.perCelsius(), -scales.zero() / scales.perCelsius()),
            humidity,
            changed(wind, scales.metresPerSecond(), 0)));
    Confirmation.say(redirect, "The weather expected was kept; phones on court begin with it.");
    return "redirect:/sessions/" + open.session().id() + "/weather";
  }

  /** The units of the form: °F and mph, or °C and km/h. */
  private record Scales(
      double perCelsius,
      double zero,
      double metresPerSecond,
      AllowedNumber temperature,
      AllowedNumber wind) {

    static Scales of(Units units) {
      return units == Units.METRIC
          ? new Scales(
              1,
              0,
              1 / 3.6,
              new AllowedNumber("The temperature in °C", -40, 60, "Maybe 28."),
              new AllowedNumber("The wind in km/h", 0, 200, "Maybe 15."))
          : new Scales(
              1.8,
              32,
              Units.METRES_PER_MILE / 3600,
              new AllowedNumber("The temperature in °F", -40, 140, "Maybe 82."),
              new AllowedNumber("The wind in mph", 0, 125, "Maybe 10."));
    }
  }

  private static OptionalDouble changed(OptionalDouble value, double times, double plus) {
    return value.isPresent()
        ? OptionalDouble.of(value.getAsDouble() * times + plus)
        : OptionalDouble.empty();
  }

  private static String plain(OptionalDouble value, double times, double plus) {
    return value.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "%.1f", value.getAsDouble() * times + plus)
            .replaceAll("\\.0$", "");
  }

  private PageFrame frame(HttpServletRequest request) {
    return frames.frame("Weather", PageFrame.Part.SESSIONS, request);
  }

  private OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return sessions.find(new SessionId(id)).orElseThrow(WeatherPages::notHere);
  }

  private static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  private String show(OpenSession open, Form form, HttpServletRequest request, Model model) {
    PageFrame frame = frame(request);
    model.addAttribute("frame", frame);
    model.addAttribute("session", open.session());
    model.addAttribute("indoors", open.isIndoors());
    model.addAttribute("form", form);
    model.addAttribute("weather", WeatherWords.of(book.of(open.session().id()), frame.units()));
    return "plan/weather";
  }
}
