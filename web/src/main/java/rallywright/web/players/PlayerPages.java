package rallywright.web.players;

/** Placeholder of the skeleton; replaced by the pages for players. */
final class PlayerPages {

  private PlayerPages() {}
}
