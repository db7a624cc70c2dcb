package org.tapeline.notify.contact;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.notify.words.Language;

/** Keeps the local copies of people; always in the caller's transaction. */
@ApplicationScoped
public class Contacts {

  /** The players for whom something changed: those before and those after. */
  public Set<UUID> keep(GuardianDetails details) {
    Guardian guardian = Guardian.findById(details.guardian());
    if (guardian == null) {
      guardian = new Guardian();
      guardian.guardian = details.guardian();
    }
    guardian.name = details.name();
    guardian.email = details.email().map(String::strip).filter(e -> !e.isEmpty()).orElse(null);
    guardian.phone = details.phone().map(String::strip).filter(p -> !p.isEmpty()).orElse(null);
    guardian.language = Language.of(details.language()).orElse(Language.ENGLISH).code();
    Set<UUID> touched = new HashSet<>(guardian.players);
    guardian.players.retainAll(details.players());
    guardian.players.addAll(details.players());
    touched.addAll(guardian.players);
    guardian.persist();
    return touched;
  }

  public void keep(PlayerDetails details) {
    Player player = Player.findById(details.player());
    if (player == null) {
      player = new Player();
      player.player = details.player();
    }
    player.givenName = details.givenName();
    player.number = details.number();
    player.team = details.team();
    player.field = details.field();
    player.persist();
  }

  public Optional<String> firstName(UUID player) {
    return Player.<Player>findByIdOptional(player).map(p -> p.givenName);
  }

  public Optional<String> team(UUID player) {
    return Player.<Player>findByIdOptional(player).map(p -> p.team);
  }

  /** The players a guardian stands for, in a steady order. */
  public List<UUID> playersOf(UUID guardian) {
    return Guardian.<Guardian>findByIdOptional(guardian).stream()
        .flatMap(g -> g.players.stream())
        .sorted()
        .toList();
  }

  /** Where the player is fitted, as far as it is known. */
  public Optional<String> field(UUID player) {
    return Player.<Player>findByIdOptional(player).map(p -> p.field);
  }

  /** The address as it is now; empty when there is none or the person was erased. */
  public Optional<String> mailOf(UUID guardian) {
    return Guardian.<Guardian>findByIdOptional(guardian).map(g -> g.email);
  }

  /** The phone number as it is now, E.164; empty when there is none or the person was erased. */
  public Optional<String> phoneOf(UUID guardian) {
    return Guardian.<Guardian>findByIdOptional(guardian).map(g -> g.phone);
  }

  /** The names of those who are known, by id. */
  public Map<UUID, String> namesOf(Collection<UUID> guardians) {
    return Guardian.<Guardian>list("guardian in ?1", guardians).stream()
        .collect(Collectors.toMap(g -> g.guardian, g -> g.name));
  }

  public void eraseGuardian(UUID guardian) {
    Guardian.deleteById(guardian);
  }

  public void erasePlayer(UUID player) {
    Player.deleteById(player);
    Guardian.getEntityManager()
        .createNativeQuery("delete from guardianship where player = ?1")
        .setParameter(1, player)
        .executeUpdate();
  }
}
