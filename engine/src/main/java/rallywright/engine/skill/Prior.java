package rallywright.engine.skill;

/** A Gaussian prior over latents, of which only the parts of its precision are needed. */
interface Prior {
  /** Nodes and edges of its precision. */
  BlockGraph graph();

  /** The owner of each latent, by any number: a pull on one moves the others' little. */
  int[] owners();

  /** The prior mean. */
  double[] mean();

  /** log density at x without the term of 2π, and its gradient added to {@code gradient}. */
  double logDensity(double[] x, double[] gradient);

  /** Adds the precision to a matrix whose pattern holds that of {@link #graph}. */
  void addPrecision(BlockMatrix matrix);

  /** Adds the product of the precision and a vector. */
  void addProduct(double[] vector, double[] product);
}
