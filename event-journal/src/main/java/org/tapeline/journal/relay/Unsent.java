package org.tapeline.journal.relay;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.apache.kafka.clients.producer.ProducerRecord;

/** Something that the relay has to send, in the order in which it must be sent. */
interface Unsent {

  /** The next records, oldest first; empty when all has been sent. */
  List<Entry> next(Connection connection, int limit) throws SQLException;

  /** Notes that these reached Kafka. */
  void sent(Connection connection, List<Entry> entries) throws SQLException;

  /**
   * @param position the row's place, by which it is noted as sent
   */
  record Entry(long position, ProducerRecord<String, byte[]> record) {}
}
