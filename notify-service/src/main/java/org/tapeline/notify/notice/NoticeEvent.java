package org.tapeline.notify.notice;

/** What happened to one notice; ids only, never a name, an address or a text. */
public sealed interface NoticeEvent
    permits NoticeRaised,
        NoticeSent,
        NoticeMovedOn,
        NoticeUndeliverable,
        NoticeAcknowledged,
        NoticeCancelled,
        NoticeEscalated,
        PersonReached {}
