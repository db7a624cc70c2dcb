package org.tapeline.notify.unreached;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;

/**
 * The list of people not reached as it stands in a mail to staff: no more of a child than first
 * name, number and team, and nothing of the guardian, whose number stands on the page behind the
 * log-in.
 *
 * @param players who is named
 * @param causes the notices that are told of
 */
public record StaffList(List<String> lines, List<UUID> players, List<UUID> causes) {
  /** More families are counted, not named: the mail stays short, the page has all of them. */
  public static final int MOST = 25;

  private static final Set<String> WHYS = Set.of("no-address", "address-refused", "not-confirmed");

  /** At most {@link #MOST} families are named. */
  public static StaffList of(UnreachedPeople.Found people, Phrases phrases) {
    List<Unreached> named = people.shown();
    List<String> lines = new ArrayList<>(named.stream().map(who -> line(who, phrases)).toList());
    if (people.families() > named.size()) {
      String more = Integer.toString(people.families() - named.size());
      lines.add(phrases.of("list.more", Facts.none().with("quantity", more)));
    }
    return new StaffList(
        List.copyOf(lines),
        named.stream()
            .flatMap(w -> w.children().stream())
            .map(Unreached.Child::player)
            .distinct()
            .toList(),
        named.stream().flatMap(who -> who.notices().stream()).distinct().toList());
  }

  private static String line(Unreached who, Phrases phrases) {
    String children =
        who.children().isEmpty()
            ? phrases.within("player.unknown")
            : who.children().stream().map(StaffList::child).collect(Collectors.joining("; "));
    String why =
        phrases.within("urgency." + who.urgency().code())
            + "; "
            + who.whys().stream()
                .map(code -> phrases.within("unreached." + (WHYS.contains(code) ? code : "other")))
                .distinct()
                .collect(Collectors.joining("; "));
    return phrases.of("list.person", Facts.none().with("player", children).with("why", why));
  }

  private static String child(Unreached.Child child) {
    return child.firstName()
        + (child.number().isEmpty() ? "" : ", " + child.number())
        + ", "
        + child.teamName();
  }
}
