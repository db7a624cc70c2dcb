package org.tapeline.journal.inbox;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apache.kafka.clients.consumer.Consumer;

/**
 * Reads the subscribed topics in several threads and gives their records to the inbox. Kafka shares
 * the partitions out among the threads, and among those of other copies of the service, so that one
 * stream is read by one of them; each mostly waits for the database.
 */
public final class InboxConsumer implements AutoCloseable {
  private final List<InboxReader> readers;

  /**
   * @param consumers makes a consumer that does not commit offsets by itself
   * @param readers how many threads read; more than a topic has partitions have nothing to do
   */
  public InboxConsumer(
      Supplier<Consumer<String, byte[]>> consumers, Set<String> topics, Inbox inbox, int readers) {
    this.readers =
        IntStream.rangeClosed(1, readers)
            .mapToObj(n -> new InboxReader("journal-inbox-" + n, consumers, topics, inbox))
            .toList();
  }

  public InboxConsumer start() {
    readers.forEach(InboxReader::start);
    return this;
  }

  public boolean alive() {
    return readers.stream().allMatch(InboxReader::alive);
  }

  @Override
  public void close() {
    readers.forEach(InboxReader::askToStop);
    readers.forEach(InboxReader::close);
  }
}
