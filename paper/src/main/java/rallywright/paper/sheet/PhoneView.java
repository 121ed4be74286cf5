package rallywright.paper.sheet;

import java.util.Optional;
import rallywright.paper.press.QrPicture;

/**
 * The corner of the sheet that leads to the phone page.
 *
 * @param code the code, or empty where no phone can open the page
 * @param words what to do with it, or why there is none
 */
public record PhoneView(Optional<QrPicture> code, String words) {}
