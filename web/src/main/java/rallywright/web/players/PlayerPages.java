package rallywright.web.players;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The list of players and the page of each: add, change, archive, take back. */
@Controller
final class PlayerPages {

  static final int UNPROCESSABLE = 422;

  private final ClubStore store;
  private final PageFrames frames;
  private final PlayerForm fields;

  PlayerPages(ClubStore store, PageFrames frames) {
    this.store = store;
    this.frames = frames;
    this.fields = new PlayerForm(store);
  }

  @GetMapping("/players")
  String list(HttpServletRequest request, Model model) {
    String group = request.getParameter("group") == null ? "" : request.getParameter("group");
    boolean archived = request.getParameter("archived") != null;
    List<Player> all = store.players().all();
    model.addAttribute("lines", lines(all, group, archived));
    model.addAttribute("groups", fields.groups());
    model.addAttribute("group", group);
    model.addAttribute("archived", archived);
    model.addAttribute("hidden", count(all, Standing.ARCHIVED));
    model.addAttribute("walkIns", walkIns(all));
    model.addAttribute("frame", frames.frame("Players", PageFrame.Part.PLAYERS, request));
    return "players/list";
  }

  @GetMapping("/players/new")
  String blank(HttpServletRequest request, Model model) {
    return showNew(Form.empty().with("hand", "RIGHT"), request, model);
  }

  @PostMapping("/players/new")
  String add(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    PlayerForm.Entered entered = fields.read(in, null);
    if (entered == null) {
      response.setStatus(UNPROCESSABLE);
      return showNew(in.form(), request, model);
    }
    fields.store(entered);
    Confirmation.say(redirect, entered.player().name() + " was added.");
    return in.raw("then").equals("next") ? "redirect:/players/new" : "redirect:/players";
  }

  @GetMapping("/players/{id}")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    Player player = find(store, id);
    return showOne(player, fields.filled(player), request, model);
  }

  @PostMapping("/players/{id}")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    Player player = find(store, id);
    FormReader in = FormReader.of(request);
    PlayerForm.Entered entered = fields.read(in, player);
    if (entered == null) {
      response.setStatus(UNPROCESSABLE);
      return showOne(player, in.form(), request, model);
    }
    fields.store(entered);
    Confirmation.say(redirect, entered.player().name() + " was changed.");
    return "redirect:/players";
  }

  @PostMapping("/players/{id}/archive")
  String archive(@PathVariable String id, RedirectAttributes redirect) {
    Player player = find(store, id);
    store.players().save(in(Standing.ARCHIVED, player));
    Confirmation.say(
        redirect,
        player.name() + " was archived: no longer offered for sessions, all results stay.");
    return "redirect:/players";
  }

  @PostMapping("/players/{id}/restore")
  String restore(@PathVariable String id, RedirectAttributes redirect) {
    Player player = find(store, id);
    store.players().save(in(Standing.ACTIVE, player));
    Confirmation.say(redirect, player.name() + " is back on the list.");
    return "redirect:/players";
  }

  /** The player of an address, who is not erased. */
  static Player find(ClubStore store, String id) {
    return store
        .players()
        .find(new PlayerId(id))
        .filter(player -> player.standing() != Standing.ERASED)
        .orElseThrow(
            () ->
                new NotHere(
                    "There is no such player. Maybe erased or merged; the list of players shows"
                        + " who is there."));
  }

  private static Player in(Standing standing, Player player) {
    return new Player(
        player.id(),
        player.name(),
        player.level(),
        player.hand(),
        player.limits(),
        player.notes(),
        player.ageGroup(),
        standing);
  }

  private List<PlayerLine> lines(List<Player> all, String group, boolean archived) {
    Attendance attendance = Attendance.of(store);
    List<Group> groups = store.groups().all();
    List<PlayerLine> lines = new ArrayList<>();
    for (Player player : all) {
      boolean shown =
          archived
              ? player.standing() == Standing.ARCHIVED
              : player.standing() == Standing.ACTIVE || player.standing() == Standing.WALK_IN;
      List<Group> own =
          groups.stream().filter(each -> each.members().contains(player.id())).toList();
      boolean chosen =
          group.isEmpty() || own.stream().anyMatch(each -> each.id().value().equals(group));
      if (shown && chosen) {
        String names = String.join(", ", own.stream().map(Group::name).toList());
        lines.add(new PlayerLine(player, names, attendance.count(player.id())));
      }
    }
    return lines;
  }

  private static List<Player> walkIns(List<Player> all) {
    return all.stream().filter(each -> each.standing() == Standing.WALK_IN).toList();
  }

  private static int count(List<Player> all, Standing standing) {
    return (int) all.stream().filter(each -> each.standing() == standing).count();
  }

  private String showNew(Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Add a player", PageFrame.Part.PLAYERS, request));
    offer(form, model);
    return "players/new";
  }

  private String showOne(Player player, Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame(player.name(), PageFrame.Part.PLAYERS, request));
    model.addAttribute("player", player);
    model.addAttribute("came", Attendance.of(store).count(player.id()));
    offer(form, model);
    return "players/one";
  }

  private void offer(Form form, Model model) {
    model.addAttribute("form", form);
    model.addAttribute("groups", fields.groups());
  }
}
