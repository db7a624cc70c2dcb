package org.tapeline.notify.unreached;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

@DisplayName("The list in a mail to staff")
class StaffListTest {
  private static final Phrases ENGLISH = Words.load().phrases(Language.ENGLISH);

  private static Unreached family(Set<String> whys, Unreached.Child... children) {
    return new Unreached(
        UUID.randomUUID(),
        "Rosa Delgado",
        Optional.empty(),
        List.of(children),
        Urgency.DO_NOT_WEAR,
        Instant.EPOCH,
        whys,
        List.of(),
        List.of(UUID.randomUUID()),
        Set.of("NORTH"));
  }

  private static Unreached.Child child(String name, String number) {
    return new Unreached.Child(UUID.randomUUID(), name, number, "U10-HAWKS");
  }

  @Test
  @DisplayName("names children by first name, number and team, and no guardian")
  void noGuardian() {
    Unreached who = family(Set.of("not-confirmed"), child("Mia", "LV-0001"), child("Leo", ""));
    StaffList list = StaffList.of(new UnreachedPeople.Found(1, List.of(who)), ENGLISH);
    assertThat(list.lines())
        .containsExactly(
            "Mia, LV-0001, U10 Hawks; Leo, U10 Hawks: do not wear; sent, but not confirmed");
    assertThat(list.players()).hasSize(2);
    assertThat(list.causes()).isEqualTo(who.notices());
  }

  @Test
  @DisplayName("says one reason of a kind once, and asks for a child whose name is not known")
  void reasons() {
    Unreached who = family(Set.of("tries-used-up", "not-delivered"));
    assertThat(StaffList.of(new UnreachedPeople.Found(1, List.of(who)), ENGLISH).lines())
        .containsExactly("Your player: do not wear; it did not arrive");
  }

  @Test
  @DisplayName("counts the families that it does not name")
  void more() {
    List<Unreached> shown =
        IntStream.range(0, StaffList.MOST)
            .mapToObj(i -> family(Set.of("no-address"), child("Mia", "LV-" + i)))
            .toList();
    StaffList list = StaffList.of(new UnreachedPeople.Found(4000, shown), ENGLISH);
    assertThat(list.lines()).hasSize(StaffList.MOST + 1);
    assertThat(list.lines().getLast()).isEqualTo("And 3975 more");
  }
}
