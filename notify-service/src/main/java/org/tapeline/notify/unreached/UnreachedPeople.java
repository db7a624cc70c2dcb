package org.tapeline.notify.unreached;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.contact.Player;
import org.tapeline.notify.escalation.EscalationRow;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.unreached.OpenNotices.Open;
import org.tapeline.notify.unreached.Unreached.Child;
import org.tapeline.notify.unreached.Unreached.Tried;

/** Who has to be reached by a person, with all that one needs for the call. */
@ApplicationScoped
public class UnreachedPeople {
  private final OpenNotices open;

  UnreachedPeople(OpenNotices open) {
    this.open = open;
  }

  /**
   * @param families how many there are in all
   * @param shown the most urgent of them, then those who wait longest
   */
  public record Found(int families, List<Unreached> shown) {}

  /**
   * @param fields only of these; empty for all
   * @param most how many families are shown
   */
  @Transactional
  public Found list(Optional<? extends Collection<String>> fields, int most) {
    return found(open.list(fields), most);
  }

  /** Those of these notices that are still open, by family. */
  @Transactional
  public Found of(Collection<UUID> notices, int most) {
    return found(open.of(notices), most);
  }

  /** Families of a team's players. */
  @Transactional
  public Found ofTeam(String team, int most) {
    return found(open.ofTeam(team), most);
  }

  private static Found found(List<Open> found, int most) {
    Map<UUID, List<Open>> byGuardian = new LinkedHashMap<>();
    for (Open one : found) {
      byGuardian.computeIfAbsent(one.guardian(), g -> new ArrayList<>()).add(one);
    }
    List<UUID> first = byGuardian.keySet().stream().limit(most).toList();
    if (first.isEmpty()) {
      return new Found(byGuardian.size(), List.of());
    }
    Known known =
        Known.of(
            first.stream()
                .flatMap(guardian -> byGuardian.get(guardian).stream())
                .map(Open::notice)
                .collect(Collectors.toSet()));
    List<Unreached> shown =
        first.stream()
            .map(guardian -> known.person(guardian, byGuardian.get(guardian)))
            .sorted(Comparator.comparing(Unreached::urgency).thenComparing(Unreached::since))
            .toList();
    return new Found(byGuardian.size(), shown);
  }

  /** All that was read at once for a list. */
  private record Known(
      Map<UUID, NoticeRow> notices,
      Map<UUID, Guardian> guardians,
      Map<UUID, Player> players,
      Map<UUID, List<Tried>> tried) {

    static Known of(Set<UUID> ids) {
      Map<UUID, NoticeRow> notices = NoticeRow.withPlayers(ids);
      Set<UUID> guardians =
          notices.values().stream()
              .map(n -> UUID.fromString(n.recipient))
              .collect(Collectors.toSet());
      Set<UUID> players =
          notices.values().stream().flatMap(n -> n.players.stream()).collect(Collectors.toSet());
      return new Known(
          notices,
          Guardian.<Guardian>list("guardian in ?1", guardians).stream()
              .collect(Collectors.toMap(g -> g.guardian, Function.identity())),
          Player.<Player>list("player in ?1", players).stream()
              .collect(Collectors.toMap(p -> p.player, Function.identity())),
          tried(ids));
    }

    private static Map<UUID, List<Tried>> tried(Set<UUID> ids) {
      Map<UUID, List<Tried>> tried = new LinkedHashMap<>();
      for (NoticeTryRow row : NoticeTryRow.of(ids)) {
        String outcome = row.outcome == null ? "cut-off" : row.outcome;
        tried
            .computeIfAbsent(row.notice, n -> new ArrayList<>())
            .add(new Tried(row.startedAt, row.channel, Optional.of(outcome)));
      }
      for (EscalationRow row : EscalationRow.of(ids)) {
        tried
            .computeIfAbsent(row.notice, n -> new ArrayList<>())
            .add(new Tried(row.at, row.step, Optional.empty()));
      }
      return tried;
    }

    Unreached person(UUID id, List<Open> open) {
      Guardian guardian = guardians.get(id);
      List<NoticeRow> rows = open.stream().map(o -> notices.get(o.notice())).toList();
      return new Unreached(
          id,
          guardian.name,
          Optional.ofNullable(guardian.phone).flatMap(Telephone::of),
          children(rows),
          rows.stream()
              .map(n -> Urgency.of(n.urgency))
              .min(Comparator.naturalOrder())
              .orElseThrow(),
          rows.stream().map(n -> n.peopleAt).min(Comparator.<Instant>naturalOrder()).orElseThrow(),
          rows.stream().map(Known::why).collect(Collectors.toCollection(LinkedHashSet::new)),
          rows.stream()
              .flatMap(n -> tried.getOrDefault(n.notice, List.of()).stream())
              .sorted(Comparator.comparing(Tried::at))
              .toList(),
          rows.stream().sorted(Comparator.comparing(n -> n.raisedAt)).map(n -> n.notice).toList(),
          open.stream().flatMap(o -> o.fields().stream()).collect(Collectors.toUnmodifiableSet()));
    }

    private List<Child> children(List<NoticeRow> rows) {
      return rows.stream()
          .flatMap(n -> n.players.stream())
          .distinct()
          .map(players::get)
          .filter(Objects::nonNull)
          .map(p -> new Child(p.player, p.givenName, p.number == null ? "" : p.number, p.team))
          .sorted(Comparator.comparing(Child::firstName).thenComparing(Child::player))
          .toList();
    }

    private static String why(NoticeRow notice) {
      return notice.state.equals("undeliverable") ? notice.why : "not-confirmed";
    }
  }
}
