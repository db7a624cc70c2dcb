package org.tapeline.notify.wish;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.notify.channel.Bounces;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.contact.PhoneNumbers;
import org.tapeline.notify.contact.Zones;
import org.tapeline.notify.optout.OptOuts;

/** Guardians with how they can be reached and what they asked for. */
@ApplicationScoped
class ContactViews {
  /** A search shows at most this many. */
  static final int MOST = 50;

  private final Contacts contacts;
  private final Bounces bounces;
  private final OptOuts optOuts;
  private final WishDesk desk;
  private final Zones zones;
  private final PhoneNumbers phones;

  ContactViews(
      Contacts contacts,
      Bounces bounces,
      OptOuts optOuts,
      WishDesk desk,
      Zones zones,
      PhoneNumbers phones) {
    this.contacts = contacts;
    this.bounces = bounces;
    this.optOuts = optOuts;
    this.desk = desk;
    this.zones = zones;
    this.phones = phones;
  }

  /**
   * @param email and {@code phone}: {@code null} where there is none
   * @param phoneDoubt what speaks against text messages to it; empty when nothing does
   * @param bounced channels whose server refused the address
   * @param zone in which the quiet hours are meant
   */
  record Line(
      UUID guardian,
      String name,
      String email,
      String phone,
      String phoneDoubt,
      String language,
      List<Child> players,
      Set<String> bounced,
      boolean optedOut,
      Wish wish,
      String zone) {}

  /** A player of a guardian. */
  record Child(UUID player, String name, String team) {}

  /** Guardians whose name, address or player's first name or team has these words in it. */
  @Transactional
  List<Line> search(String text) {
    String like = "%" + text.strip().toLowerCase(Locale.ROOT).replaceAll("[%_\\\\]", "") + "%";
    return Guardian.<Guardian>find(
            """
            lower(name) like ?1 or lower(email) like ?1 or phone like ?1 or exists
            (select 1 from Player p where p.player member of players
              and (lower(p.givenName) like ?1 or lower(p.team) like ?1))
            order by name, guardian
            """,
            like)
        .page(0, MOST)
        .list()
        .stream()
        .map(this::line)
        .toList();
  }

  @Transactional
  Optional<Line> one(UUID guardian) {
    return Guardian.<Guardian>findByIdOptional(guardian).map(this::line);
  }

  private Line line(Guardian guardian) {
    String id = guardian.guardian.toString();
    Wish wish = desk.wish(id);
    return new Line(
        guardian.guardian,
        guardian.name,
        guardian.email,
        guardian.phone,
        guardian.phone == null ? "" : phones.doubt(guardian.phone),
        guardian.language,
        guardian.players.stream().sorted().map(this::child).toList(),
        bounces.of(id),
        optOuts.has(id),
        wish,
        wish.zone().orElseGet(() -> zones.ofGuardian(guardian.guardian)).getId());
  }

  private Child child(UUID player) {
    return new Child(
        player,
        contacts.firstName(player).orElse("not known yet"),
        contacts.team(player).orElse(""));
  }
}
