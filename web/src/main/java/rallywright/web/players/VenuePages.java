package rallywright.web.players;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Player;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.store.ClubStore;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.UnitChoice;
import rallywright.web.page.Units;

/** The places where the club plays: how many courts, indoors or outdoors, ball, surface, height. */
@Controller
final class VenuePages {

  private static final int LONGEST_WORDS = 80;
  private static final AllowedNumber COURTS =
      new AllowedNumber("The number of courts", 1, Venue.MOST_COURTS, "Maybe 2.");

  private final ClubStore store;
  private final PageFrames frames;
  private final UnitChoice units;

  VenuePages(ClubStore store, PageFrames frames, UnitChoice units) {
    this.store = store;
    this.frames = frames;
    this.units = units;
  }

  @GetMapping("/players/venues")
  String list(HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Venues", PageFrame.Part.PLAYERS, request));
    model.addAttribute("venues", store.venues().all());
    return "players/venues";
  }

  @GetMapping("/players/venues/new")
  String blank(HttpServletRequest request, Model model) {
    Form form = Form.empty().with("setting", "OUTDOOR").with("courts", "1").with("altitude", "0");
    return show(null, form, request, model);
  }

  @PostMapping("/players/venues/new")
  String add(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    return save(null, request, response, redirect, model);
  }

  @GetMapping("/players/venues/{id}")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    Venue venue = find(id);
    Form form =
        Form.empty()
            .with("name", venue.name())
            .with("courts", String.valueOf(venue.courts()))
            .with("setting", venue.setting().name())
            .with("ball", venue.ball())
            .with("surface", venue.surface())
            .with("altitude", plain(venue.altitudeMetres() / metresPerUnit()));
    return show(venue, form, request, model);
  }

  @PostMapping("/players/venues/{id}")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    return save(find(id), request, response, redirect, model);
  }

  @PostMapping("/players/venues/{id}/remove")
  String remove(@PathVariable String id, RedirectAttributes redirect) {
    Venue venue = find(id);
    store.venues().remove(venue.id());
    Confirmation.say(redirect, venue.name() + " was deleted; sessions held there stay.");
    return "redirect:/players/venues";
  }

  private String save(
      @Nullable Venue before,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    Venue venue = read(in, before);
    if (venue == null || in.failed()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return show(before, in.form(), request, model);
    }
    store.venues().save(venue);
    Confirmation.say(redirect, venue.name() + (before == null ? " was added." : " was changed."));
    return "redirect:/players/venues";
  }

  private @Nullable Venue read(FormReader in, @Nullable Venue before) {
    String name = in.text("name", "The venue's name", Player.LONGEST_NAME);
    int courts = in.neededWhole("courts", COURTS);
    Venue.Setting setting = in.choice("setting", "The setting", Venue.Setting.OUTDOOR);
    String ball = in.line("ball", "The ball", LONGEST_WORDS);
    String surface = in.line("surface", "The surface", LONGEST_WORDS);
    OptionalDouble altitude = in.number("altitude", altitude());
    if (in.failed()) {
      return null;
    }
    VenueId id = before == null ? new VenueId(store.freshId()) : before.id();
    return new Venue(
        id, name, courts, setting, ball, surface, altitude.orElse(0) * metresPerUnit());
  }

  private AllowedNumber altitude() {
    return units.current() == Units.METRIC
        ? new AllowedNumber("The height above the sea in metres", -430, 6000, "Maybe 120.")
        : new AllowedNumber("The height above the sea in feet", -1410, 19685, "Maybe 400.");
  }

  private double metresPerUnit() {
    return units.current() == Units.METRIC ? 1 : Units.METRES_PER_FOOT;
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private Venue find(String id) {
    return store
        .venues()
        .find(new VenueId(id))
        .orElseThrow(() -> new NotHere("There is no such venue. Maybe it was deleted."));
  }

  private String show(@Nullable Venue venue, Form form, HttpServletRequest request, Model model) {
    String title = venue == null ? "Add a venue" : venue.name();
    model.addAttribute("frame", frames.frame(title, PageFrame.Part.PLAYERS, request));
    model.addAttribute("address", venue == null ? "new" : venue.id().value());
    model.addAttribute("form", form);
    return "players/venue";
  }
}
