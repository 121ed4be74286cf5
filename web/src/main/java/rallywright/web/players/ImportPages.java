package rallywright.web.players;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.store.ClubStore;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** Many players at once: paste or send a file, look at what was understood, then store. */
@Controller
final class ImportPages {

  private static final int LONGEST_SHEET = 1_000_000;

  private final ClubStore store;
  private final PageFrames frames;

  ImportPages(ClubStore store, PageFrames frames) {
    this.store = store;
    this.frames = frames;
  }

  @GetMapping("/players/import")
  String blank(HttpServletRequest request, Model model) {
    return show(Form.empty(), null, request, model);
  }

  /** Shows what was understood; nothing is stored. */
  @PostMapping("/players/import")
  String preview(
      @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model)
      throws IOException {
    FormReader in = FormReader.of(request);
    String text = file == null || file.isEmpty() ? in.raw("sheet") : decoded(file, in);
    if (text.length() > LONGEST_SHEET) {
      in.problem("sheet", "The list is too long. Send at most 500 players at once.");
    }
    PlayerList list = in.failed() ? null : read(text);
    if (list == null || !list.problems().isEmpty()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
    }
    return show(in.form().with("sheet", text), list, request, model);
  }

  /** Stores the list that was looked at, all of it or nothing. */
  @PostMapping("/players/import/store")
  String keep(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    PlayerList list = read(in.raw("sheet"));
    if (!list.problems().isEmpty()) {
      response.setStatus(PlayerPages.UNPROCESSABLE);
      return show(in.form(), list, request, model);
    }
    store.players().saveAll(list.players());
    int count = list.players().size();
    Confirmation.say(
        redirect, count == 1 ? "One player was added." : count + " players were added.");
    return "redirect:/players";
  }

  private PlayerList read(String text) {
    return PlayerList.read(text, store.players().all(), store::freshId);
  }

  private static String decoded(MultipartFile file, FormReader in) throws IOException {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(file.getBytes()))
          .toString();
    } catch (CharacterCodingException notText) {
      in.problem(
          "sheet",
          "The file is not text in UTF-8. Save it as \"CSV UTF-8\", or paste its lines here.");
      return in.raw("sheet");
    }
  }

  private String show(
      Form form, @Nullable PlayerList list, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Paste a list", PageFrame.Part.PLAYERS, request));
    model.addAttribute("form", form);
    model.addAttribute("problems", list == null ? List.of() : list.problems());
    model.addAttribute(
        "understood", list == null || !list.problems().isEmpty() ? List.of() : list.players());
    return "players/import";
  }
}
