package org.tapeline.notify.channel;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * In which order one person is tried: what the person asked for first, then the association's order
 * for the urgency. An address that bounced comes last, for it may be all that there is.
 */
public final class ChannelPlan {
  private ChannelPlan() {}

  /**
   * @param order the policy's, most wanted first
   * @param wishes the person's own, may be empty; they put channels first and leave none out
   * @param known channels on which an address is known
   * @param bounced channels whose address was refused for good
   */
  public static List<String> of(
      List<String> order, List<String> wishes, Set<String> known, Set<String> bounced) {
    Collection<String> wanted = new LinkedHashSet<>(wishes);
    wanted.addAll(order);
    List<String> reachable = wanted.stream().filter(known::contains).toList();
    return Stream.concat(
            reachable.stream().filter(c -> !bounced.contains(c)),
            reachable.stream().filter(bounced::contains))
        .toList();
  }
}
