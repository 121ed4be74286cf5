package rallywright.web.players;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.store.ErasedGames;
import rallywright.store.StoreProblem;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** Erasing a person for good, and merging a walk-in into a player of the list. */
@Controller
final class LeavingPages {

  private final ClubStore store;
  private final PageFrames frames;

  LeavingPages(ClubStore store, PageFrames frames) {
    this.store = store;
    this.frames = frames;
  }

  @GetMapping("/players/{id}/erase")
  String askErase(@PathVariable String id, HttpServletRequest request, Model model) {
    Player player = PlayerPages.find(store, id);
    return showErase(player, Form.empty().with("games", "KEEP"), request, model);
  }

  @PostMapping("/players/{id}/erase")
  String erase(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    Player player = PlayerPages.find(store, id);
    FormReader in = FormReader.of(request);
    ErasedGames games = in.choice("games", "The choice for the games", ErasedGames.KEEP);
    String typed = in.raw("confirm").strip();
    if (!typed.equals(player.name().strip())) {
      in.problem(
          "confirm",
          typed.isEmpty()
              ? "The name is empty. Type \"" + player.name() + "\" to erase for good."
              : "\"%s\" is not \"%s\". Type the name exactly to erase for good."
                  .formatted(FormReader.echo(typed), player.name()));
    }
    if (in.failed()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return showErase(player, in.form(), request, model);
    }
    store.players().erase(player.id(), games);
    Confirmation.say(redirect, "The person was erased for good.");
    return "redirect:/players";
  }

  @GetMapping("/players/{id}/merge")
  String askMerge(@PathVariable String id, HttpServletRequest request, Model model) {
    return showMerge(walkIn(id), Form.empty(), request, model);
  }

  @PostMapping("/players/{id}/merge")
  String merge(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    Player walkIn = walkIn(id);
    FormReader in = FormReader.of(request);
    String into = in.raw("into").strip();
    if (!others(walkIn).containsKey(into)) {
      in.problem("into", "Nobody was chosen. Pick the player of the list that the walk-in is.");
    } else {
      tryMerge(walkIn, new PlayerId(into), in);
    }
    if (in.failed()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return showMerge(walkIn, in.form(), request, model);
    }
    Confirmation.say(redirect, walkIn.name() + " was merged; all games stand with the player now.");
    return "redirect:/players/" + into;
  }

  private void tryMerge(Player walkIn, PlayerId into, FormReader in) {
    try {
      store.players().merge(walkIn.id(), into);
    } catch (StoreProblem refused) {
      String sentence = refused.getMessage();
      in.problem("into", sentence == null ? "This was refused; nothing was changed." : sentence);
    }
  }

  private Player walkIn(String id) {
    Player player = PlayerPages.find(store, id);
    if (player.standing() != Standing.WALK_IN) {
      throw new NotHere(player.name() + " is no walk-in, so there is nothing to merge.");
    }
    return player;
  }

  private Map<String, String> others(Player walkIn) {
    Map<String, String> others = new LinkedHashMap<>();
    store.players().all().stream()
        .filter(each -> each.standing() != Standing.ERASED && !each.id().equals(walkIn.id()))
        .forEach(each -> others.put(each.id().value(), each.name()));
    return others;
  }

  private String showErase(Player player, Form form, HttpServletRequest request, Model model) {
    model.addAttribute(
        "frame", frames.frame("Erase " + player.name(), PageFrame.Part.PLAYERS, request));
    model.addAttribute("player", player);
    model.addAttribute("form", form);
    return "players/erase";
  }

  private String showMerge(Player walkIn, Form form, HttpServletRequest request, Model model) {
    Map<String, String> options = new LinkedHashMap<>(Map.of("", "choose…"));
    options.putAll(others(walkIn));
    model.addAttribute(
        "frame", frames.frame("Who is " + walkIn.name() + "?", PageFrame.Part.PLAYERS, request));
    model.addAttribute("player", walkIn);
    model.addAttribute("options", options);
    model.addAttribute("form", form);
    return "players/merge";
  }
}
