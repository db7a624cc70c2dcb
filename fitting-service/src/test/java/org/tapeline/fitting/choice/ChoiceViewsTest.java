package org.tapeline.fitting.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.choice.ChoiceView.AtField;
import org.tapeline.fitting.choice.ChoiceView.Day;
import org.tapeline.fitting.choice.ChoiceView.Time;
import org.tapeline.fitting.choice.ChoiceViews.FieldName;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.OpenSlot;
import org.tapeline.fitting.fitday.ReachableSlot;
import org.tapeline.fitting.refit.RefitChoice;

@DisplayName("What a guardian can choose from")
class ChoiceViewsTest {
  private static final Instant NOW = Instant.parse("2025-09-12T16:00:00Z");
  private static final Instant HALF_PAST_NINE = Instant.parse("2025-09-16T15:30:00Z");
  private static final UUID DAY = new UUID(1, 1);

  private final List<ReachableSlot> free = new ArrayList<>();
  private Optional<Booking> booking = Optional.empty();
  private Optional<Instant> from = Optional.of(NOW);

  private ChoiceViewsTest has(Instant startsAt) {
    Instant ends = startsAt.plusSeconds(900);
    booking = Optional.of(new Booking(DAY, "NORTH", startsAt, ends, "America/Denver"));
    return this;
  }

  private ChoiceViewsTest free(String field, int minutes, Instant startsAt, int lane) {
    UUID day = new UUID(field.hashCode(), startsAt.getEpochSecond() / 86_400);
    free.add(
        new ReachableSlot(
            new OpenSlot(day, field, startsAt, startsAt.plusSeconds(900), lane), minutes));
    return this;
  }

  private ChoiceView in(ChoiceLanguage language) {
    ChoiceViews views =
        new ChoiceViews(
            language,
            ChoiceWords.load().get(language),
            field ->
                new FieldName(
                    "Field " + field,
                    ZoneId.of(field.equals("WEST") ? "America/Los_Angeles" : "America/Denver")));
    return views.of(new RefitChoice(DAY, DAY, "NORTH", true, from, booking, 2, free), "Mia", NOW);
  }

  private static Instant plusDays(int days) {
    return HALF_PAST_NINE.plus(Duration.ofDays(days));
  }

  @Test
  @DisplayName("shows each time once, in the field's own time, by day")
  void times() {
    free("NORTH", 0, plusDays(0), 1).free("NORTH", 0, plusDays(0), 2);
    free("NORTH", 0, plusDays(0).plusSeconds(900), 1).free("WEST", 30, plusDays(0), 1);
    List<AtField> fields = in(ChoiceLanguage.ENGLISH).fields();
    assertThat(fields)
        .extracting(AtField::heading)
        .containsExactly(
            "At Field NORTH, your field", "At Field WEST, about 30 minutes from your field");
    assertThat(fields.getFirst().days())
        .extracting(Day::date)
        .containsExactly("Tuesday, September 16");
    assertThat(fields.getFirst().days().getFirst().times())
        .extracting(Time::said)
        .containsExactly("9:30 AM", "9:45 AM");
    assertThat(fields.getLast().days().getFirst().times())
        .extracting(Time::said)
        .containsExactly("8:30 AM");
  }

  @Test
  @DisplayName("says of later days that they mean a longer wait, and folds away what is far off")
  void later() {
    has(plusDays(1));
    for (int day = 0; day < 6; day++) {
      free("NORTH", 0, plusDays(day).plusSeconds(900), 1);
    }
    free("RIVER", 15, plusDays(0), 1).free("WEST", 30, plusDays(4), 1);
    ChoiceView view = in(ChoiceLanguage.SPANISH);
    AtField own = view.fields().getFirst();
    assertThat(own.days()).extracting(Day::later).containsExactly(false, false, true);
    assertThat(own.more()).hasSize(3);
    assertThat(view.fields()).extracting(AtField::folded).containsExactly(false, false, true);
    assertThat(view.current())
        .contains("Miércoles 17 de septiembre, de 9:30 a. m. a 9:45 a. m., en Field NORTH.");
    assertThat(view.notes()).hasSize(1).first().asString().contains("Mia no puede usar el casco");
  }

  @Test
  @DisplayName("never holds the time that the case has, nor another fitter's slot at that time")
  void own() {
    has(plusDays(0)).free("NORTH", 0, plusDays(0), 2);
    ChoiceView view = in(ChoiceLanguage.ENGLISH);
    assertThat(view.fields()).isEmpty();
    assertThat(view.none().orElseThrow()).contains("You keep the time you have");
  }

  @Test
  @DisplayName("says from which day on there is anything, and when that is not known")
  void arrival() {
    from = Optional.of(plusDays(2));
    free("NORTH", 0, plusDays(3), 1);
    assertThat(in(ChoiceLanguage.SPANISH).notes().getLast())
        .isEqualTo(
            "No se muestran horas antes del jueves 18 de septiembre. Lo que Mia necesita no llega"
                + " antes.");
    from = Optional.empty();
    free.clear();
    assertThat(in(ChoiceLanguage.ENGLISH).none().orElseThrow()).contains("We do not know yet");
  }
}
