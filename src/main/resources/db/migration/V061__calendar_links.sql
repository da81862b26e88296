-- The private link to a person's calendar: of its secret only the hash is kept. The seed names the
-- person's events and outlasts every link, so that a renewed one brings no event a second time.
create table calendar_link (
    person_id bigint primary key references person (id),
    seed varchar(36) not null,
    token_hash varchar(64),
    made_at timestamp(6) with time zone,
    constraint calendar_link_token_once unique (token_hash)
);
