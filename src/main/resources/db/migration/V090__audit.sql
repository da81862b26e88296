-- Who did what and when: one entry a transaction that changed rows, and one for what nobody's rows
-- tell, such as a wrong sign-in. Ids only and no keys to other tables, so that a person may be
-- forgotten and the record stays.
create sequence audit_entry_seq increment by 1;

create table audit_entry (
    id          bigint                      not null primary key,
    happened_at timestamp(6) with time zone not null,
    person_id   bigint,
    door        varchar(200)                not null,
    deed        varchar(40)                 not null
);

create index audit_entry_of_person on audit_entry (person_id, id);
create index audit_entry_by_time on audit_entry (happened_at, id);

-- Rows of one table changed alike, their ids in a row from the first to the last; no ids where rows
-- have none of their own.
create table audit_change (
    entry_id bigint      not null references audit_entry (id),
    position int         not null,
    thing    varchar(60) not null,
    kind     varchar(10) not null,
    first_id bigint,
    last_id  bigint,
    amount   int         not null,
    primary key (entry_id, position),
    constraint audit_change_kind_known check (kind in ('INSERTED', 'CHANGED', 'REMOVED'))
);

create index audit_change_of_thing on audit_change (thing, entry_id);
