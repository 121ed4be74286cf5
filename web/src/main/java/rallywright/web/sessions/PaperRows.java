package rallywright.web.sessions;

import java.util.List;

/**
 * One block of the grid that is typed in from paper.
 *
 * @param title what it is called
 * @param counted how its games are counted
 * @param games its games in the order of the court sheet
 */
public record PaperRows(String title, String counted, List<GameWords> games) {}
