package org.tapeline.notify.mail;

import java.util.Optional;
import java.util.UUID;

/**
 * A mail, ready to be put into MIME.
 *
 * @param calendar an iCalendar file to attach
 * @param refitCase puts the mails of one case into one conversation
 */
record OutgoingMail(
    UUID notice,
    String to,
    String language,
    String subject,
    String plain,
    String html,
    Optional<String> calendar,
    Optional<UUID> refitCase) {}
