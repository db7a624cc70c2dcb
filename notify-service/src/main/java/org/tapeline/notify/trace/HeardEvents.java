package org.tapeline.notify.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.PreparedStatement;
import java.time.ZoneOffset;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Transactions;

/**
 * Notes which events were heard, when they happened and who said so; in the inbox's transaction.
 */
@ApplicationScoped
public class HeardEvents {
  /** Details of people lead to no notice by themselves, and nothing of them is kept here. */
  private static final String PEOPLE = "people";

  private static final String INSERT =
      """
      insert into heard_event
        (event, service, type, stream, happened_at, correlation_id, causation_id)
      values (?, ?, ?, ?, ?, ?, ?) on conflict do nothing
      """;

  private final Transactions transactions;

  HeardEvents(Transactions transactions) {
    this.transactions = transactions;
  }

  public void note(ReceivedEvent event) {
    if (event.topic().equals(PEOPLE)) {
      return;
    }
    EventTypeName type = EventTypeName.parse(event.type());
    transactions.required(
        connection -> {
          try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
            insert.setObject(1, event.id());
            insert.setString(2, type.service());
            insert.setString(3, event.type());
            insert.setString(4, event.stream());
            insert.setObject(5, event.time().atOffset(ZoneOffset.UTC));
            insert.setObject(6, event.correlationId());
            insert.setObject(7, event.causationId());
            insert.executeUpdate();
          }
          return null;
        });
  }
}
