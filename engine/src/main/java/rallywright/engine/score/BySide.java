package rallywright.engine.score;

import java.util.function.Function;

/**
 * One value for each side.
 *
 * @param a the value of side A
 * @param b the value of side B
 * @param <T> what both sides have
 */
public record BySide<T>(T a, T b) {

  /**
   * A value for each side.
   *
   * @param a the value of side A
   * @param b the value of side B
   * @param <T> what both sides have
   * @return both
   */
  public static <T> BySide<T> of(T a, T b) {
    return new BySide<>(a, b);
  }

  /**
   * The same value for both sides.
   *
   * @param value the value of each side
   * @param <T> what both sides have
   * @return both
   */
  public static <T> BySide<T> both(T value) {
    return new BySide<>(value, value);
  }

  /**
   * The value of one side.
   *
   * @param side the side asked for
   * @return its value
   */
  public T of(Side side) {
    return side == Side.A ? a : b;
  }

  /**
   * A copy with another value for one side.
   *
   * @param side the side that changes
   * @param value its new value
   * @return the copy
   */
  public BySide<T> with(Side side, T value) {
    return side == Side.A ? new BySide<>(value, b) : new BySide<>(a, value);
  }

  /**
   * The values changed one by one.
   *
   * @param change what to do with each
   * @param <R> what comes out
   * @return the changed values
   */
  public <R> BySide<R> map(Function<? super T, ? extends R> change) {
    return new BySide<>(change.apply(a), change.apply(b));
  }

  /**
   * The sides exchanged.
   *
   * @return the value of B as A's, and of A as B's
   */
  public BySide<T> swapped() {
    return new BySide<>(b, a);
  }
}
