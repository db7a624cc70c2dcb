package org.tapeline.notify.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;

/** A restock request as a depot reads it. */
@ApplicationScoped
public class RestockWords {
  private final Places places;

  RestockWords(Places places) {
    this.places = places;
  }

  /** In a list: how much of what, for whom, by which day. */
  public String line(RestockOpen request, ZoneId zone, Phrases phrases) {
    return phrases.of(
        "list.restock",
        asked(request, phrases)
            .with("expected", Moments.date(request.expectedAt, zone, phrases.language())));
  }

  /** How much of what, and for whom. */
  public Facts asked(RestockOpen request, Phrases phrases) {
    return pieces(request.item, request.quantity, phrases).with("to", places.nameOf(request.place));
  }

  /** How much of what. */
  public static Facts pieces(String item, int quantity, Phrases phrases) {
    return Facts.none()
        .with("quantity", Integer.toString(quantity))
        .with("item", TradeWords.item(item, phrases));
  }
}
