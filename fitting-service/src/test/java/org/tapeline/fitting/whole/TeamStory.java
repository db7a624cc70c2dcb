package org.tapeline.fitting.whole;

import java.util.List;
import java.util.UUID;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * A team with trouble: each of its players has lost a helmet, one was fitted in it, one has moved
 * to another field, one has left and come back, one is gone.
 */
final class TeamStory {
  final String home;
  final String away;
  final String team;
  final Person fitted;
  final Person moved = Person.next();
  final Person back = Person.next();
  final Person gone = Person.next();
  private final Peers peers;
  private final UUID session;

  /** With the one who was fitted: that is this service's own deed and comes first. */
  TeamStory(Peers peers, long number) {
    this.peers = peers;
    this.home = "HOME-" + number;
    this.away = "AWAY-" + number;
    this.fitted = peers.arrives(home);
    this.team = fitted.team();
    this.session = new Fitter("manager", home).fits(fitted.player(), fitted.tag());
  }

  /** Everything else, each stream in its order. */
  List<List<Envelope>> streams() {
    return List.of(
        List.of(peers.field(away)),
        List.of(
            peers.enrolled(moved.player(), moved.number(), "OLD-TEAM", home),
            peers.advised(moved.player(), "youth-small"),
            peers.moved(moved.player(), team, away),
            peers.advised(moved.player(), "youth-large")),
        List.of(
            peers.enrolled(back.player(), back.number(), team, home),
            peers.left(back.player()),
            peers.enrolled(back.player(), back.number(), team, home)),
        List.of(
            peers.enrolled(gone.player(), gone.number(), team, home), peers.left(gone.player())),
        List.of(peers.advised(fitted.player(), "youth-small")),
        named(moved, "Amber"),
        named(back, "Birch"),
        named(fitted, "Cedar"),
        named(gone, "Dale"),
        List.of(
            peers.received(moved.tag(), home),
            peers.issued(moved.tag(), moved.player(), session),
            peers.quarantined(moved.tag(), moved.player())),
        List.of(
            peers.received(back.tag(), home),
            peers.issued(back.tag(), back.player(), session),
            peers.retired(back.tag())),
        List.of(
            peers.received(gone.tag(), home),
            peers.issued(gone.tag(), gone.player(), session),
            peers.quarantined(gone.tag(), gone.player())),
        List.of(
            peers.issued(fitted.tag(), fitted.player(), session),
            peers.quarantined(fitted.tag(), fitted.player())));
  }

  private List<Envelope> named(Person person, String name) {
    return List.of(
        peers.details(person.player(), person.number(), team, home, "Before"),
        peers.details(person.player(), person.number(), team, home, name));
  }
}
