package org.tapeline.fitting.choice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.tapeline.fitting.choice.ChoiceView.AtField;
import org.tapeline.fitting.choice.ChoiceView.Day;
import org.tapeline.fitting.choice.ChoiceView.Time;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.OpenSlot;
import org.tapeline.fitting.fitday.ReachableSlot;
import org.tapeline.fitting.fitday.SlotRef;
import org.tapeline.fitting.refit.RefitChoice;

/** Puts a choice into the words of a language, each field in its own time. */
final class ChoiceViews {
  /** More than anybody reads through; the own field's and the nearest come first. */
  private static final int MOST_TIMES = 120;

  private final ChoiceLanguage language;
  private final ChoiceWords words;
  private final Function<String, FieldName> fields;

  /** A field as people call it, and its clock. */
  record FieldName(String name, ZoneId zone) {}

  ChoiceViews(ChoiceLanguage language, ChoiceWords words, Function<String, FieldName> fields) {
    this.language = language;
    this.words = words;
    this.fields = fields;
  }

  /**
   * @param player the first name
   */
  ChoiceView of(RefitChoice choice, String player, Instant now) {
    List<AtField> free = free(choice);
    return new ChoiceView(
        words,
        words.of("heading", Map.of("player", player)),
        choice.booking().map(this::said),
        choice.booking().map(booking -> SlotRef.of(booking).text()).orElse(""),
        notes(choice, player, now),
        free.isEmpty() ? Optional.of(none(choice, player)) : Optional.empty(),
        free);
  }

  private String said(Booking booking) {
    ZoneId zone = ZoneId.of(booking.zone());
    return words.of(
        "current.said",
        Map.of(
            "date", language.date(booking.startsAt(), zone),
            "time", language.time(booking.startsAt(), zone),
            "ends", language.time(booking.endsAt(), zone),
            "place", fields.apply(booking.field()).name()));
  }

  private List<String> notes(RefitChoice choice, String player, Instant now) {
    List<String> notes = new ArrayList<>();
    if (choice.withoutHelmet()) {
      notes.add(words.of("without.helmet", Map.of("player", player)));
    }
    choice
        .from()
        .filter(now::isBefore)
        .map(from -> language.date(from, fields.apply(choice.field()).zone()))
        .ifPresent(
            date -> notes.add(words.of("not.before", Map.of("date", date, "player", player))));
    return notes;
  }

  private String none(RefitChoice choice, String player) {
    if (choice.from().isEmpty()) {
      return words.of("not.known", Map.of("player", player));
    }
    return words.of(choice.booking().isPresent() ? "none.free" : "none.free.undated");
  }

  private List<AtField> free(RefitChoice choice) {
    Map<SlotRef, ReachableSlot> offered = new LinkedHashMap<>();
    choice.booking().map(SlotRef::of).ifPresent(had -> offered.put(had, null));
    for (ReachableSlot each : choice.free()) {
      if (offered.size() <= MOST_TIMES) {
        offered.putIfAbsent(SlotRef.of(each.slot()), each);
      }
    }
    return offered.values().stream()
        .filter(Objects::nonNull)
        .collect(groupingBy(each -> each.slot().field(), LinkedHashMap::new, toList()))
        .values()
        .stream()
        .map(slots -> atField(slots, choice))
        .toList();
  }

  private AtField atField(List<ReachableSlot> slots, RefitChoice choice) {
    FieldName field = fields.apply(slots.getFirst().slot().field());
    List<Day> days =
        slots.stream()
            .map(ReachableSlot::slot)
            .collect(
                groupingBy(
                    slot -> language.date(slot.startsAt(), field.zone()),
                    LinkedHashMap::new,
                    mapping(slot -> time(slot, field.zone(), choice), toList())))
            .entrySet()
            .stream()
            .map(day -> new Day(day.getKey(), day.getValue()))
            .toList();
    return new AtField(heading(field.name(), slots.getFirst().minutes()), days);
  }

  private String heading(String place, int minutes) {
    return minutes == 0
        ? words.of("at.own", Map.of("place", place))
        : words.of("at.other", Map.of("place", place, "minutes", Integer.toString(minutes)));
  }

  private Time time(OpenSlot slot, ZoneId zone, RefitChoice choice) {
    boolean later =
        choice.withoutHelmet()
            && choice.booking().filter(b -> slot.startsAt().isAfter(b.startsAt())).isPresent();
    return new Time(SlotRef.of(slot).text(), language.time(slot.startsAt(), zone), later);
  }
}
