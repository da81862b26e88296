-- What the school has; how much of it is the sum of its movements.
create sequence stock_item_seq increment by 50;

create table stock_item (
    id bigint primary key,
    version bigint not null,
    kind varchar(20) not null,
    name varchar(120) not null,
    -- The name in small letters with single blanks: how somebody spells it does not matter.
    name_key varchar(120) not null,
    unit varchar(20) not null,
    changed_by_id bigint not null references person (id),
    changed_at timestamp(6) with time zone not null,
    used_as varchar(20),
    material varchar(60),
    outline varchar(20),
    top_length_mm double precision,
    top_width_mm double precision,
    bottom_length_mm double precision,
    bottom_width_mm double precision,
    depth_mm double precision,
    lip_mm double precision,
    mass_kg double precision,
    dry_low_kg_per_litre double precision,
    dry_high_kg_per_litre double precision,
    capacity_low double precision,
    capacity_high double precision,
    air_low double precision,
    air_high double precision,
    bag_litres double precision,
    metal varchar(20),
    gauge_mm double precision,
    constraint stock_item_once unique (kind, name_key),
    constraint stock_item_kind
        check (kind in ('CONTAINER', 'SUBSTRATE', 'MIX', 'WIRE', 'TOOL', 'SUPPLY')),
    constraint stock_item_container
        check (kind <> 'CONTAINER' or (used_as in ('NURSERY', 'TRAINING', 'SHOW')
            and outline in ('ROUND', 'OVAL', 'RECTANGULAR')
            and top_length_mm > 0 and top_width_mm > 0
            and bottom_length_mm > 0 and bottom_width_mm > 0
            and depth_mm > 0 and lip_mm >= 0 and lip_mm < depth_mm)),
    constraint stock_item_substrate
        check (dry_low_kg_per_litre <= dry_high_kg_per_litre
            and capacity_low <= capacity_high and air_low <= air_high
            and capacity_low + air_low <= 1),
    constraint stock_item_wire
        check (kind <> 'WIRE' or (metal in ('ALUMINIUM', 'COPPER') and gauge_mm > 0))
);

create table stock_mix_part (
    mix_id bigint not null references stock_item (id),
    position integer not null,
    substrate_id bigint not null references stock_item (id),
    parts double precision not null,
    primary key (mix_id, position),
    constraint stock_mix_part_once unique (mix_id, substrate_id),
    constraint stock_mix_part_parts check (parts > 0)
);

create sequence stock_movement_seq increment by 50;

create table stock_movement (
    id bigint primary key,
    item_id bigint not null references stock_item (id),
    kind varchar(20) not null,
    -- What came is above 0 and what went below; of a count, what it differed by from the books.
    amount numeric(12, 3) not null,
    on_day date not null,
    note varchar(500),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint stock_movement_kind
        check ((kind = 'RECEIVED' and amount > 0) or (kind = 'TAKEN' and amount < 0)
            or kind = 'COUNTED')
);

create index stock_movement_of_item on stock_movement (item_id, on_day);
