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
  /** A list shows at most this many notices, the most urgent first. */
  public static final int MOST = 1000;

  private final OpenNotices open;

  UnreachedPeople(OpenNotices open) {
    this.open = open;
  }

  /**
   * The most urgent first, then the one who waits longest.
   *
   * @param fields only of these; empty for all
   */
  @Transactional
  public List<Unreached> list(Optional<? extends Collection<String>> fields) {
    return people(open.list(fields, MOST));
  }

  /** Those of these notices that are still open, by person. */
  @Transactional
  public List<Unreached> of(Collection<UUID> notices) {
    return people(open.of(notices));
  }

  /** Guardians of a team's players. */
  @Transactional
  public List<Unreached> ofTeam(String team) {
    return people(open.ofTeam(team));
  }

  private static List<Unreached> people(List<Open> found) {
    if (found.isEmpty()) {
      return List.of();
    }
    Set<UUID> ids = found.stream().map(Open::notice).collect(Collectors.toSet());
    Known known = Known.of(ids);
    Map<UUID, List<Open>> byGuardian = new LinkedHashMap<>();
    for (Open one : found) {
      UUID guardian = UUID.fromString(known.notices().get(one.notice()).recipient);
      byGuardian.computeIfAbsent(guardian, g -> new ArrayList<>()).add(one);
    }
    List<Unreached> people = new ArrayList<>();
    byGuardian.forEach((guardian, theirs) -> people.add(known.person(guardian, theirs)));
    people.sort(Comparator.comparing(Unreached::urgency).thenComparing(Unreached::since));
    return people;
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
