-- Writes answered in the last 48 hours, for whoever sends the same again from a bad line. A row is
-- written in the transaction of the work it tells of; until that ends nobody else sees it.
create table answered_request (
    person_id    bigint                      not null references person (id),
    request_key  varchar(64)                 not null,
    request_hash varchar(64)                 not null,
    begun_at     timestamp(6) with time zone not null,
    status       int,
    location     varchar(300),
    entity_tag   varchar(40),
    body         varchar(60000),
    primary key (person_id, request_key)
);

create index answered_request_by_age on answered_request (begun_at);
