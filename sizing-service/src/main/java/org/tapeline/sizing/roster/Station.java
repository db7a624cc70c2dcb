package org.tapeline.sizing.roster;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where somebody who measures one player after the other stands.
 *
 * @param team empty for all
 * @param skipped roster numbers of those who were not here, in the order of asking
 * @param waiting roster numbers of all who are to be measured, in the order of the queue
 */
record Station(String team, List<String> skipped, List<String> waiting) {
  /** An address holds no more; who was skipped before is asked for again. */
  private static final int MOST_SKIPPED = 150;

  private static final Pattern NUMBER = Pattern.compile("[A-Z0-9-]{2,20}");

  Station {
    skipped =
        List.copyOf(skipped.subList(Math.max(0, skipped.size() - MOST_SKIPPED), skipped.size()));
  }

  /**
   * @param skipped roster numbers with a dot between them, or {@code null}
   */
  static Station of(String team, String skipped, List<String> waiting) {
    List<String> numbers =
        skipped == null
            ? List.of()
            : NUMBER.matcher(skipped).results().map(found -> found.group()).distinct().toList();
    return new Station(team == null ? "" : team.strip(), numbers, waiting);
  }

  Optional<String> next() {
    return waiting.stream().filter(number -> !skipped.contains(number)).findFirst();
  }

  /** Who is still to come, the next one too. */
  public long left() {
    return waiting.stream().filter(number -> !skipped.contains(number)).count();
  }

  /** Who was not here and was not measured by anybody since. */
  public long notHere() {
    return waiting.size() - left();
  }

  public String skip() {
    return String.join(".", skipped);
  }

  public String address() {
    return "/sizing/station?team=" + URLEncoder.encode(team, StandardCharsets.UTF_8);
  }

  String addressOfNext() {
    return address() + "&skip=" + skip();
  }

  /** The next player without this one. */
  public String addressWithout(String number) {
    List<String> more = new ArrayList<>(skipped);
    more.add(number);
    return new Station(team, more, waiting).addressOfNext();
  }
}
