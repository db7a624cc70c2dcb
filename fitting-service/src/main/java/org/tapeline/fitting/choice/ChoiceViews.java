package org.tapeline.fitting.choice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
  /** More than anybody reads through; the nearest and the soonest come first. */
  private static final int MOST_FIELDS = 5;

  private static final int MOST_DAYS = 10;

  /** Of the own field, and of one that helps to wait less; the rest is folded away. */
  private static final int FIRST_DAYS = 3;

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
    ZoneId zone = fields.apply(choice.field()).zone();
    choice
        .from()
        .filter(from -> LocalDate.ofInstant(from, zone).isAfter(LocalDate.ofInstant(now, zone)))
        .map(from -> language.dateWithin(from, zone))
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
    return choice.free().stream()
        .collect(groupingBy(each -> each.slot().field(), LinkedHashMap::new, toList()))
        .values()
        .stream()
        .map(slots -> atField(slots, choice))
        .filter(field -> !field.days().isEmpty())
        .limit(MOST_FIELDS)
        .toList();
  }

  private AtField atField(List<ReachableSlot> slots, RefitChoice choice) {
    ReachableSlot nearest = slots.getFirst();
    FieldName field = fields.apply(nearest.slot().field());
    List<Day> days = days(slots, field.zone(), choice);
    boolean own = nearest.minutes() == 0;
    int helps = (int) days.stream().filter(day -> !day.later()).count();
    int first = own ? FIRST_DAYS : helps == 0 ? MOST_DAYS : Math.min(helps, FIRST_DAYS);
    int shown = Math.min(days.size(), first);
    return new AtField(
        heading(field.name(), nearest.minutes()),
        !own && helps == 0,
        days.subList(0, shown),
        days.subList(shown, days.size()));
  }

  private List<Day> days(List<ReachableSlot> slots, ZoneId zone, RefitChoice choice) {
    Optional<LocalDate> now =
        choice
            .booking()
            .filter(booking -> choice.withoutHelmet())
            .map(b -> LocalDate.ofInstant(b.startsAt(), ZoneId.of(b.zone())));
    return times(slots, choice).stream()
        .collect(
            groupingBy(slot -> LocalDate.ofInstant(slot.startsAt(), zone), TreeMap::new, toList()))
        .entrySet()
        .stream()
        .limit(MOST_DAYS)
        .map(
            day ->
                new Day(
                    language.date(day.getValue().getFirst().startsAt(), zone),
                    now.filter(day.getKey()::isAfter).isPresent(),
                    day.getValue().stream().map(slot -> time(slot, zone)).toList()))
        .toList();
  }

  /** Each time once, whichever fitter or fit day it is, and without the one that the case has. */
  private static List<OpenSlot> times(List<ReachableSlot> slots, RefitChoice choice) {
    Map<Instant, OpenSlot> byTime = new TreeMap<>();
    slots.forEach(each -> byTime.putIfAbsent(each.slot().startsAt(), each.slot()));
    choice
        .booking()
        .filter(booking -> booking.field().equals(slots.getFirst().slot().field()))
        .ifPresent(booking -> byTime.remove(booking.startsAt()));
    return List.copyOf(byTime.values());
  }

  private String heading(String place, int minutes) {
    return minutes == 0
        ? words.of("at.own", Map.of("place", place))
        : words.of("at.other", Map.of("place", place, "minutes", Integer.toString(minutes)));
  }

  private Time time(OpenSlot slot, ZoneId zone) {
    return new Time(SlotRef.of(slot).text(), language.time(slot.startsAt(), zone));
  }
}
