package rallywright.web.sessions;

import java.net.URI;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.paper.CourtSheet;
import rallywright.paper.DrillBook;
import rallywright.paper.Origin;
import rallywright.paper.PaperSize;
import rallywright.paper.PhoneAccess;
import rallywright.paper.SheetRequest;
import rallywright.web.ServerSettings;
import rallywright.web.oncourt.CourtAccess;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.PrintedPages;

/** The court sheet as PDF. */
@Controller
final class SheetPages {

  private final SessionDesk desk;
  private final CourtAccess access;
  private final PhoneAddress address;
  private final DrillBook drills;
  private final ServerSettings settings;

  SheetPages(
      SessionDesk desk,
      CourtAccess access,
      PhoneAddress address,
      DrillBook drills,
      ServerSettings settings) {
    this.desk = desk;
    this.access = access;
    this.address = address;
    this.drills = drills;
    this.settings = settings;
  }

  @GetMapping("/sessions/{id}/sheet.pdf")
  ResponseEntity<byte[]> sheet(
      @PathVariable String id, @RequestParam(defaultValue = "a4") String paper) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw SessionPages.notHere();
    }
    OpenSession open = desk.find(new SessionId(id)).orElseThrow(SessionPages::notHere);
    PaperSize size = PrintedPages.paper(paper);
    Origin origin = settings.mode() == ServerSettings.Mode.DEMO ? Origin.DEMO : Origin.OWN_CLUB;
    byte[] pdf =
        CourtSheet.pdf(
            new SheetRequest(open.session(), open.players(), drills, phones(open), origin), size);
    return PrintedPages.shown(pdf, fileName(open.session()));
  }

  private PhoneAccess phones(OpenSession open) {
    if (!address.reason().isEmpty()) {
      return new PhoneAccess.Closed(address.reason());
    }
    String key = access.issue(open.session());
    return new PhoneAccess.Open(URI.create(address.base() + "/court#key=" + key));
  }

  private static String fileName(Session session) {
    return "court-sheet-" + session.date() + ".pdf";
  }
}
