package org.tapeline.fitting.choice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.fitting.choice.ChoiceViews.FieldName;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.SlotRef;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.refit.RefitChoice;
import org.tapeline.fitting.refit.RefitChoices;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.token.SlotLinks.Slot;

/** What the holder of a link may see and do: one case's free slots, in the reader's language. */
@ApplicationScoped
class Choices {
  private final Map<ChoiceLanguage, ChoiceWords> words = ChoiceWords.load();
  private final RefitChoices refits;
  private final CommandLog commands;
  private final Clock clock;
  private final String domain;

  Choices(
      RefitChoices refits,
      CommandLog commands,
      Clock clock,
      @ConfigProperty(name = "tapeline.mail.domain") String domain) {
    this.refits = refits;
    this.commands = commands;
    this.clock = clock;
    this.domain = domain;
  }

  ChoiceWords wordsOf(Slot link) {
    return words.get(ChoiceLanguage.of(link.language()));
  }

  /** Empty when the case is over. */
  @Transactional
  Optional<ChoiceView> view(Slot link) {
    ChoiceLanguage language = ChoiceLanguage.of(link.language());
    ChoiceViews views = new ChoiceViews(language, words.get(language), Choices::field);
    return refits
        .of(link.refitCase())
        .map(choice -> views.of(choice, firstName(choice, link), clock.instant()));
  }

  /** The calendar file of the slot that the case has. */
  @Transactional
  Optional<String> calendar(Slot link) {
    return refits
        .of(link.refitCase())
        .flatMap(choice -> choice.booking().map(booking -> calendar(link, choice, booking)));
  }

  private String calendar(Slot link, RefitChoice choice, Booking booking) {
    Map<String, String> player = Map.of("player", firstName(choice, link));
    return RefitEntry.write(
        new RefitEntry(
            "refit-" + choice.refitCase() + "@" + domain,
            choice.revision(),
            clock.instant(),
            booking.startsAt(),
            booking.endsAt(),
            wordsOf(link).of("summary", player),
            field(booking.field()).name(),
            wordsOf(link).of("description", player)));
  }

  /**
   * The id of the command follows from what was sent and what was chosen: sent twice it is done
   * once, and whoever goes back in the browser and chooses otherwise is understood.
   *
   * @throws Problem when it cannot be taken; see {@link RefitChoices#take}
   */
  void take(Slot link, UUID sent, Optional<SlotRef> had, SlotRef wanted) {
    String asked = had.map(SlotRef::text).orElse("") + ">" + wanted.text();
    UUID id = DerivedId.from(sent, "choose-slot/" + link.refitCase() + "/" + asked);
    commands.once(
        id,
        "choose-slot",
        Map.of("refitCase", link.refitCase(), "asked", asked),
        () -> {
          refits.take(link.refitCase(), had, wanted, link.notice(), Cause.command(id));
          return Answer.of(200, Map.of("slot", wanted.text()));
        });
  }

  private String firstName(RefitChoice choice, Slot link) {
    return PlayerCopy.<PlayerCopy>findByIdOptional(choice.player())
        .map(player -> player.givenName)
        .filter(name -> !name.isBlank())
        .orElseGet(() -> wordsOf(link).of("player.unknown"));
  }

  private static FieldName field(String code) {
    Place place = Place.findById(code);
    ZoneId zone = Place.zoneOf(code);
    return new FieldName(place == null ? code : place.name, zone);
  }
}
