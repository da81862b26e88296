-- What the page after a form says once to whoever sent the form; some minutes old at most.
create table page_note (
    note_key  varchar(43)                 not null primary key,
    person_id bigint                      not null references person (id),
    said_at   timestamp(6) with time zone not null,
    sentence  varchar(1000)               not null,
    path      varchar(300),
    label     varchar(200)
);

create index page_note_by_age on page_note (said_at);
