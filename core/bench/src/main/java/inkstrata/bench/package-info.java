/**
 * Benchmarks of the planar map beside JTS OverlayNG, on drawings everybody can make again from a seed.
 *
 * <p>Run by {@code mvn -B verify -Pbench -pl core/bench -am -DskipTests}; machines differ and are shared, so compare
 * ratios within one run. Read {@link inkstrata.bench.Report} first.
 */
package inkstrata.bench;
