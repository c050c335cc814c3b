/** What each command is for and takes, as `--help` prints it. */
export const help = {
  main: `skiffloom plans, checks and prints the 12 V or 24 V electrics of a small open boat.

  skiffloom check PLAN      what is wrong with it, and what would be right
  skiffloom figures PLAN    every current, voltage, size, fuse and hour
  skiffloom packet PLAN     the pages for the garage, as PDF
  skiffloom sheet PLAN      one part of the packet by itself, as PDF or SVG
  skiffloom boxes PLAN      each box: glands, holes, order of drilling; templates at true scale
  skiffloom routes PLAN     how every run lies, its slack, what to cut
  skiffloom cuts PLAN       what to cut from which length, and the flags for the ends
  skiffloom parts PLAN      what to take from the shelf and what to buy
  skiffloom form PLAN       the hull as measured, what does not fit, what to measure next
  skiffloom marks PLAN      where to drill: tape readings, checks, and what your readings say
  skiffloom float PLAN      draft, trim, freeboard, levers; each hole over the water
  skiffloom work PLAN       what to do next, the order of all that is left, what was built
  skiffloom changes OLD NEW what a change of plan does, in words and figures
  skiffloom prove PLAN      what your meter says: test sheet, what is wrong, what to measure next
  skiffloom netlist PLAN    the circuit as SPICE text
  skiffloom new             asks a few questions and writes a plan to start from
  skiffloom apply PLAN N    makes the change that finding N proposes, and keeps your comments
  skiffloom schema          the JSON Schema of a plan
  skiffloom --version       which one this is

PLAN is a YAML file (docs/plan-format.md; examples/ has some), or - for standard input.
skiffloom COMMAND --help tells more; --language en or es says it in that language, else LC_ALL, LC_MESSAGES
or LANG of your system choose. Figures are planning aids: local rules, makers' instructions
and licensed practice come first.`,
  check: `skiffloom check PLAN [--json] [--working]

Reads a plan, works everything out and prints what it finds, gravest first:
  stop        do not build it so
  mend        should be put right
  mind        worth knowing
  not checked could not be judged; not the same as fine

  --working   how each figure came about
  --json      the same as data (docs/json.md)

Ends with status 0 when nothing is a stop, 1 when something is, 2 when the plan can't be read.
Each remedy has a number that 'skiffloom apply PLAN NUMBER' takes.`,
  figures: `skiffloom figures PLAN [--corner NAME] [--assumed] [--json]

Prints every electrical figure of a plan: gear with voltage and drop, conductors with size and reason,
fuses and breakers, batteries, outings.

  --corner NAME  corner to show the gear at: 'worst drop' (the default), 'nominal', 'highest voltage' or one of the plan's own
  --assumed      also list every value that was assumed, and why
  --json         everything at every corner, as data (docs/json.md)`,
  prove: `skiffloom prove PLAN [--sheet | --water] [--json]
skiffloom prove PLAN --mended PLACE [--note TEXT] [--now WHEN]
skiffloom prove PLAN --battery NAME --shows 12.4 [--with 3.2 | --on GEAR] [--use 2]

Compares the readings in the plan with what a sound boat would show, ranks what may be wrong,
and says what to measure next. Readings that were taken when a project was finished are what
later ones are compared with: a joint that ages shows.

  --sheet     the test sheet: every reading to take, what to expect, what to stop for
  --water     the card for the water: switches, fuses, hours left, what to turn off first
  --mended    put a mend of this stretch, fuse, cable, gear or battery on record: readings taken through it
              before are no longer held against the boat, and what proves the mend is asked for
  --battery   hours left in a battery, from the volts it --shows, with so many amperes on
              (--with) or this gear on (--on "side lights, sounder"); left out: at rest.
              At a use of so many amperes from now (--use; left out: what was on)
  --json      the same as data (docs/json.md)

Ends with status 0 when every reading is as expected and every mend proven, 1 when one is not, 2 when the plan can't be read.
Take meters to live circuits only where you know what you do; batteries can weld and burn.`,
  netlist: `skiffloom netlist PLAN [--corner NAME] [--to FILE] [--force]

Prints one corner of the circuit as SPICE text, every element named after its run, leg, joint or gear,
so that anyone can check the figures with a circuit simulator of their own.

  --corner NAME  'worst drop' (the default), 'nominal', 'highest voltage' or one of the plan's own
  --to FILE      write it there instead; --force writes over a file that is there`,
  packet: `skiffloom packet PLAN [--for tonight|project] [--now WHEN] [--to FILE] [--paper letter|a4] [--language en|es] [--force]

Writes the pages for the garage as one PDF: summary, loads, conductors, fuses, findings with their working,
what was assumed, the circuit on one line, outings; the survey, a marks sheet for each face with a drawing to scale, the
hole list and how she floats; boxes with their templates at true scale, runs, cuts, ends, flags for the wires and the
shopping list; the order of work with a square to tick for each step, and the as-built sheet;
the test sheet with every expected reading, the card for the water; cautions.

  --for tonight  only the steps of the next evening or day you are free, and the sheets they need
  --for project  only what is left of the project in hand, and the sheets it needs
  --now WHEN     with --for: take this for the time now, such as '2026-04-11 19:20'
  --to FILE   where; the plan's name with .pdf if left out
  --paper     letter or a4, else what the plan says
  --language  en or es: what the pages are written in; that of the command line if left out. Names of the plan stay
  --force     write over a file that is there

One sheet by itself: 'skiffloom sheet PLAN --only TITLE'.`,
  sheet: `skiffloom sheet PLAN [--only TITLE] [--page N] [--paper letter|a4] [--language en|es] [--to FILE] [--force]

Writes one part of the packet by itself, as PDF, or one page of it as SVG. Without --only it lists the parts.

  --only TITLE  'conductor schedule', 'one-line diagram' and so on
  --page N      that page alone, as SVG at true scale
  --paper       letter or a4, else what the plan says
  --language    en or es: what the page is written in, titles too; that of the command line if left out
  --to FILE     where; the plan's name with the title if left out
  --force       write over a file that is there`,
  boxes: `skiffloom boxes PLAN [--box NAME] [--csv] [--json]
skiffloom boxes PLAN --template svg|dxf --to FOLDER [--box NAME] [--force]

Prints for every box what comes in by which gland, where each hole goes, in what order it is drilled, and what is
inside. A box is laid out where its inside is told, or chosen from the boxes you would buy:
  boxes: {fore box: {inside: [170 mm, 120 mm, 75 mm], wall: 3 mm, of: abs, boss: 10 mm, lid lip: 5 mm}}
  box catalogue: {small: {inside: [110 mm, 80 mm, 50 mm], price: 14 EUR}, large: {inside: [190 mm, 140 mm, 80 mm], price: 23 EUR}}
A box with 'holes' is taken as it is drilled, and checked.

  --box NAME           this box only
  --template svg|dxf   a file at true scale for each face that is drilled, svg with a bar and a square to check
                       the print by; the packet has them for paper
  --to FOLDER          where the files go; --force writes over those that are there
  --csv                the holes as a table, in the plan's unit, from the lower left corner of the face's inside
  --json               everything as data (docs/json.md)

Clamp a box, never hold it in the hand: a step drill grabs. Wear eye protection.`,
  routes: `skiffloom routes PLAN [--slack] [--csv] [--json]

Prints how every run lies: what it passes, how long it is along the legs, the slack to work with, and what to
cut. Then what lies together on each leg, and where it is held.

A plan that says nothing of ways gets its cables' lengths as they are written. To have them worked out, name the
points cables pass (waypoints), the stretches between (legs), and lead a run along them:
  waypoints: {knee: {bend: 40 mm}}
  legs: {under the thwart: {from: helm, to: knee, length: 5 ft}, up the stem: {from: knee, to: fore box, length: 3 ft}}
  runs: {lamp trunk: {from: helm / lamps, to: fore box, along: [knee]}}

  --slack  why each end has the slack it has
  --csv    the runs as a table for a spreadsheet
  --json   everything as data (docs/json.md)`,
  cuts: `skiffloom cuts PLAN [--labels] [--csv] [--json]

Prints what to cut from which length, kind of wire by kind of wire: offcuts first, then spools on hand, then what is
bought; the least money, and of that the least wire opened. Of what is on hand 25 mm of the old end go first. Cut in this order, longest first, and put both flags on a
piece before it leaves the spool.

  --labels  the flags for both ends of every piece instead
  --csv     the table (or with --labels the flags) for a spreadsheet or a label printer
  --json    everything as data (docs/json.md)

Stock stands in the plan: stock: {wire: [{size: 16 AWG, cores: 2, length: 11 ft}]}; so do prices, by the foot, the
metre or the spool: prices: {wire: [{size: 16 AWG, cores: 2, spool: 100 ft, price: 62 USD}]}.`,
  parts: `skiffloom parts PLAN [--stock FILE] [--prices FILE] [--csv WHAT] [--json]
skiffloom parts PLAN --book | --shelve [--to FILE]
skiffloom parts PLAN --loads FILE [--to FILE]

Prints what to take from the shelf and what to buy: wire, terminals, sleeve, glands, fuses, everything, with spares, in the
cheapest packs. What has no price is named and left out of the total; a price is never guessed.

  --stock FILE   a CSV of what is on hand, instead of the plan's own: item,count,size,
                 cores,colour,length (in),kind (offcut or spool); the unit in the heading, or in each cell
  --prices FILE  a CSV of prices besides the plan's own: item,pack,count,price ('4.20 EUR'; empty: not known)
  --csv WHAT     'list' the shopping list; 'stock' and 'prices' as tables to fill in; 'loads' the gear; lengths in the plan's unit
  --book         when the work is done: writes what is left over into the plan's stock, as if nothing was spoiled;
                 --to FILE writes it there and leaves PLAN as it is, --force writes over a file
  --shelve       what was bought, as ticked on the list, becomes stock: the next list takes it from there
  --loads FILE   a CSV of gear, as --csv loads writes it: gear the plan lacks is added, what differs is set; written into PLAN,
                 or with --to FILE there
  --json         everything as data (docs/json.md)

Items go by the names this list has; stock and prices are matched by them.`,
  form: `skiffloom form PLAN [--json]
skiffloom form --offsets FILE.csv [--numbers mm|m|in|feet-inches-eighths]

Prints the form of the craft as measured: its lines, what does not fit, and what to measure next and why.
Three ways to give it, under craft / form:
  stations, lines      a tape survey: at each station how far out and how high each line is
  start from           a shape to begin with: flat-bottomed skiff, vee-bottomed utility, round tender, canoe,
                       sit-on-top kayak, sit-in kayak; scaled to length, beam and depth, mended by 'measured'
  offsets              the text of a table of offsets
Nothing is smoothed away: a figure off the line of its neighbours is named, with what would be fair.

How to survey alone: chock the boat level, stretch a line along the centre, mark stations on it, and at each station
measure from the line out to keel, chine and sheer, and up from a level floor or plank. Six stations are the least
at which a slip shows.

  --offsets FILE  prints the plan section of a table of offsets: columns station, NAME half-breadth, NAME height (or estación, NAME semimanga, NAME altura)
  --numbers       how the table's numbers are written; millimetres if left out
  --json          everything as data (docs/json.md)`,
  marks: `skiffloom marks PLAN [--face NAME] [--why] [--json]

Prints where to drill: for each mark two tape readings from points one can put a finger on, a check reading from a
third, and how sure the place is. Marks come in the order to set them out, surest first. The packet has them as sheets
with a drawing, to stand beside the boat with. Below them: what to cut each hole with, what seals it, what is behind it,
and in which order the wires are pulled.

How: hold the tape at the first point and swing an arc at the reading, do the same from the second, mark where they
cross, then read the check. Write what you read into the plan and run this again:
  checked: {coaming lamp 2: {seat bracket: 10 3/4 in, knee screw: 33 13/16 in}}
It then tells whether the mark stands right, which way to move it, or that the boat's two sides differ. Three readings
a mark are the least that tell much.

  --face NAME  this face only
  --why        why these reference points and not others
  --json       everything as data (docs/json.md)

Know what is behind before you drill: tank, foam, wiring, fuel. Set the drill's stop.`,
  float: `skiffloom float PLAN [--json]

Prints how she floats under what the plan puts aboard: draft, trim, heel, freeboard, metacentric height and righting
levers, what moving a weight does, and for each hole its height over still water and the heel and trim that put it under.
It needs a form (skiffloom form --help) and weights:
  float:
    water: sea
    hull: {weight: 150 kg, at: [80 in, 0 in, 13 in]}       # forward of station 0, to port, up
    people: {at the tiller: {weight: 80 kg, at: [34 in, 5 in, 22 in]}}
    other: {motor: {weight: 38 kg, at: [-6 in, 0 in, 24 in]}}
Batteries and gear weigh where they stand: 'weight' with a face, or with 'stands at'.

  --json  everything as data (docs/json.md)

Planning aids for still water, no stability assessment: waves, people who move and water inside change everything.
The boat's own plate and her maker come first.`,
  work: `skiffloom work PLAN [--all] [--built] [--now WHEN] [--json]
skiffloom work PLAN --done STEP [--note TEXT] [--now WHEN]
skiffloom work PLAN --undo STEP | --note TEXT --step STEP | --finish NAME [--shelf]

What to do next, with its sizes, tools and caution, then all that is left, in the order that takes least time
over your free hours and fewest changes of tool; what rests meanwhile, and what was built.

  --all        every step with its sizes, tools and caution, not only the next
  --built      what was done and built, and where it differs from the plan
  --done STEP  tick a step: it and what it made are written into the plan
  --undo STEP  take the last tick of a step back
  --note TEXT  a note with the tick, or for --step
  --finish NAME  the project is done: the plan takes the sizes, fuses, lengths and holes that were built, and the next
               project starts from them
  --shelf      with --finish: what the project used comes off the stock, what was bought for it and is left goes there;
               instead of 'parts --book', not besides it
  --now WHEN   take this for the time now, such as '2026-04-11 19:20'
  --json       everything as data (docs/json.md)

A step is called by its name in the list, such as 'draw / lamp trunk'. Nothing recorded is ever lost when the plan
changes: what the change undoes is said.`,
  changes: `skiffloom changes OLD NEW [--json]

What a change of plan does, in words and figures: what was written otherwise, every figure that is another, findings
that are gone and that are new, parts and wire to buy, steps of work, and what was built that the new plan wants
otherwise.

  OLD NEW  two plan files; one of them may be - for standard input
  --json   the same as data (docs/json.md)

Ends with status 0 whether anything changed or not, 2 when a plan can't be read.`,
  schema: `skiffloom schema

Prints the JSON Schema of the plan format, for editors that complete and check as one types.`,
  new: `skiffloom new [--to FILE] [--force]

Asks a few questions about the boat, its battery and its gear, and writes a plan to go on from. What you
do not know yet is left open: it is worked out, or assumed and listed as such. Press Enter to take what
stands in brackets.

  --to FILE  where; boat.yaml if left out. --force writes over a file that is there`,
  apply: `skiffloom apply PLAN NUMBER [--to FILE]
skiffloom apply PLAN --edit JSON [--to FILE]

Changes a plan and keeps everything else in it as you wrote it, comments too.

  NUMBER       a remedy as 'skiffloom check PLAN' numbers it: 3 or 3a, 3b …
  --edit JSON  any edit, for example '{"edit": "set run size", "at": "lamp trunk", "to": "14 AWG"}'
  --to FILE    write there and leave PLAN as it is; --force writes over a file that is there
  --show       print the changed plan instead of writing it`,
};
