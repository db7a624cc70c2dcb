package org.tapeline.notify.sheet;

import java.util.List;
import java.util.UUID;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;

/**
 * What one family gets on paper, in its language.
 *
 * @param to the guardian's name, so that it gets into the right hands
 * @param children first names, numbers and teams, for whoever hands it over
 * @param letters what is open, the oldest first; one or more
 * @param phone of the fitters; empty where none is set
 * @param code a QR code of the newest letter's page, as a picture
 * @param notices that it tells of
 * @param commandId of the button, so that pressing it twice does it once
 */
public record Slip(
    UUID guardian,
    String to,
    String children,
    Phrases phrases,
    List<Letter> letters,
    String phone,
    String code,
    List<UUID> notices,
    UUID commandId) {}
