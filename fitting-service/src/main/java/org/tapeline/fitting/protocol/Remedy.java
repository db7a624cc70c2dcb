package org.tapeline.fitting.protocol;

import java.util.List;

/**
 * Something to try.
 *
 * @param voids checks that must be done again afterwards, in the protocol's order: all that depend
 *     on what the remedy changes. The check that it is tried for is void in any case.
 * @param items the parts it can use, the usual one first; empty when it takes none from stock
 */
public record Remedy(String id, String text, List<String> voids, List<String> items) {
  public Remedy {
    voids = List.copyOf(voids);
    items = List.copyOf(items);
  }
}
