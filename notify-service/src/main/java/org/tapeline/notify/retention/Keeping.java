package org.tapeline.notify.retention;

import java.time.Duration;
import java.util.List;

/**
 * One thing that is deleted when it is old, with the statement that deletes some of it. What is
 * still to be sent keeps everything; counts and events stay for ever.
 *
 * @param what in words, as it is counted
 * @param keptFor how long
 * @param delete with the time before which it is old, and how many at most
 */
record Keeping(String what, Duration keptFor, String delete) {

  static List<Keeping> of(RetentionPolicy policy) {
    return List.of(
        new Keeping(
            "words of notices",
            policy.words(),
            """
            delete from notice_text where notice in (
              select t.notice from notice_text t join notice n on n.notice = t.notice
              where n.state <> 'raised' and n.changed_at < ? limit ?)
            """),
        new Keeping(
            "tries",
            policy.tries(),
            """
            delete from notice_try where (notice, attempt) in (
              select t.notice, t.attempt from notice_try t join notice n on n.notice = t.notice
              where n.state <> 'raised' and n.changed_at < ? limit ?)
            """),
        new Keeping(
            "text messages",
            policy.tries(),
            """
            delete from text_message where (notice, message_group) in (
              select t.notice, t.message_group
              from text_message t join notice n on n.notice = t.notice
              where n.state <> 'raised' and n.changed_at < ? limit ?)
            """),
        new Keeping(
            "causes",
            policy.causes(),
            """
            delete from heard_event where event in (
              select event from heard_event where happened_at < ? limit ?)
            """));
  }
}
