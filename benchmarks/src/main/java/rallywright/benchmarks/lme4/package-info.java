/**
 * The skill model beside the R package lme4 on models that both contain, in one run.
 *
 * <p>Start with {@link rallywright.benchmarks.lme4.BesideLme4}, which `run-beside-lme4` starts
 * after lme4 has answered. Nothing here takes part in the tests or in the tool.
 */
@NullMarked
package rallywright.benchmarks.lme4;

import org.jspecify.annotations.NullMarked;
