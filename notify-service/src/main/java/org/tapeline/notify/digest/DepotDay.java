package org.tapeline.notify.digest;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.restock.RestockOpen;
import org.tapeline.notify.restock.RestockWords;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;

/** A depot's morning: what is late, what is new, what is still to be picked, what is on its way. */
@ApplicationScoped
class DepotDay implements Digest {
  private static final Duration A_DAY = Duration.ofDays(1);

  private final Staff staff;
  private final Places places;
  private final RestockWords restock;

  DepotDay(Staff staff, Places places, RestockWords restock) {
    this.staff = staff;
    this.places = places;
    this.restock = restock;
  }

  @Override
  public NoticeKind kind() {
    return NoticeKind.DEPOT_DAY;
  }

  @Override
  public List<String> recipients() {
    return staff.depots();
  }

  @Override
  public Content of(String recipient, ZoneId zone, Instant now, Phrases phrases) {
    List<RestockOpen> open =
        RestockOpen.inOrder().stream()
            .filter(r -> staff.depot(r.servedFrom()).equals(recipient))
            .toList();
    List<RestockOpen> late = open.stream().filter(r -> r.expectedAt.isBefore(now)).toList();
    List<RestockOpen> fresh =
        open.stream()
            .filter(r -> r.requestedAt.isAfter(now.minus(A_DAY)) && !late.contains(r))
            .toList();
    List<RestockOpen> going =
        open.stream().filter(r -> !r.state.equals("requested") && !late.contains(r)).toList();
    List<Letter.Section> sections = new ArrayList<>();
    Content.add(sections, phrases, "list.late", late, r -> restock.line(r, zone, phrases));
    Content.add(sections, phrases, "list.new", fresh, r -> restock.line(r, zone, phrases));
    Content.add(sections, phrases, "list.short", toPick(open).entrySet(), e -> item(e, phrases));
    Content.add(sections, phrases, "list.going", going, r -> restock.line(r, zone, phrases));
    String place = staff.placeOf(recipient).map(places::nameOf).orElse("");
    return new Content(
        open.size(), place, sections, List.of(), "link.restock", "/inventory/restock");
  }

  /** Pieces by item that nobody has taken off a shelf yet. */
  private static Map<String, Integer> toPick(List<RestockOpen> open) {
    return open.stream()
        .filter(r -> r.state.equals("requested"))
        .collect(Collectors.toMap(r -> r.item, r -> r.quantity, Integer::sum, TreeMap::new));
  }

  private static String item(Map.Entry<String, Integer> pieces, Phrases phrases) {
    return phrases.of(
        "list.item", RestockWords.pieces(pieces.getKey(), pieces.getValue(), phrases));
  }
}
