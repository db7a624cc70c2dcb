package org.tapeline.proof.fuzz;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/**
 * What is to be tried.
 *
 * @param root of the checkout: the demo's files and the events' schemas are samples
 * @param address of the gateway of a stack that {@code deploy/start} runs
 * @param data folder of that stack, with its secrets and its mails
 * @param seconds for the endpoints; what else is tried comes on top
 * @param share of the broken records that are sent, from 0 to 1
 * @param pages that are looked at, at most
 * @param slow whether slow callers and large bodies are tried, which takes a minute
 */
public record FuzzOptions(
    Path root,
    URI address,
    Path data,
    long seed,
    long seconds,
    double share,
    int pages,
    boolean slow) {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final int ALL_PAGES = 2_000;

  /**
   * All of it.
   *
   * @param args root, address, data folder, seed, seconds, as {@code deploy/fuzz} says them
   */
  static FuzzOptions of(List<String> args) {
    return new FuzzOptions(
        Path.of(args.get(0)),
        URI.create(args.get(1)),
        Path.of(args.get(2)),
        Long.parseLong(args.get(3)),
        Long.parseLong(args.get(4)),
        1,
        ALL_PAGES,
        true);
  }

  /** For one answer, however busy the machine is. */
  Duration patience() {
    return PATIENCE;
  }
}
