package org.tapeline.testkit;

import jakarta.enterprise.inject.spi.CDI;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.GroupListing;
import org.apache.kafka.clients.admin.ListOffsetsResult.ListOffsetsResultInfo;
import org.apache.kafka.clients.admin.OffsetSpec;
import org.apache.kafka.clients.consumer.OffsetAndMetadata;
import org.apache.kafka.common.TopicPartition;
import org.awaitility.Awaitility;

/** The service that is tested has nothing more to read and nothing more to say. */
final class Settled {
  private Settled() {}

  /** Waits until it has worked off what the topics hold, and every event of its journal is sent. */
  static void await(String bootstrapServers, Duration atMost) {
    DataSource dataSource = CDI.current().select(DataSource.class).get();
    try (Admin admin = Admin.create(Map.of("bootstrap.servers", bootstrapServers))) {
      Awaitility.await().atMost(atMost).until(() -> allRead(admin) && allSent(dataSource));
    }
  }

  private static boolean allRead(Admin admin) throws ExecutionException, InterruptedException {
    for (GroupListing group : admin.listGroups().all().get()) {
      Map<TopicPartition, OffsetAndMetadata> read =
          admin.listConsumerGroupOffsets(group.groupId()).partitionsToOffsetAndMetadata().get();
      Map<TopicPartition, ListOffsetsResultInfo> ends =
          admin
              .listOffsets(
                  read.keySet().stream()
                      .collect(Collectors.toMap(p -> p, p -> OffsetSpec.latest())))
              .all()
              .get();
      if (ends.entrySet().stream()
          .anyMatch(end -> read.get(end.getKey()).offset() < end.getValue().offset())) {
        return false;
      }
    }
    return true;
  }

  private static boolean allSent(DataSource dataSource) throws SQLException {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement unsent =
            connection.prepareStatement("select 1 from journal_unsent limit 1");
        ResultSet row = unsent.executeQuery()) {
      return !row.next();
    }
  }
}
