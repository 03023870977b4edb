/** What a caution is about; the build sheet and the assembly steps pick theirs by it. */
export type CautionTopic =
  | 'saws'
  | 'dust'
  | 'foam'
  | 'lids'
  | 'lifting'
  | 'stings'
  | 'snow'
  | 'wind'
  | 'finish'
  | 'fire'

/** One warning to print beside the work it belongs to. */
export interface Caution {
  readonly id: string
  readonly topic: CautionTopic
  readonly text: string
  readonly source: string
}

/** The warnings of the build sheet, in the order of the work. */
export const CAUTIONS: readonly Caution[] = [
  {
    id: 'table-saw',
    topic: 'saws',
    text:
      'Learn the saw from someone who knows it. Keep guard and riving knife on, stand out of ' +
      'line with the blade, and push with a stick once your hand would come within 300 mm. No ' +
      'gloves. Never use the rip fence and the mitre gauge together. Follow the maker and the ' +
      'safety rules of your country.',
    source: 'from memory: HSE Woodworking Sheet 16 and OSHA 1910.213',
  },
  {
    id: 'small-parts',
    topic: 'saws',
    text:
      'Do not rip a piece shorter than 300 mm on a table saw. Shape small frame parts at the end ' +
      'of a long board, and cut them free last with a stop and a sled.',
    source: 'from memory: shop practice',
  },
  {
    id: 'wood-dust',
    topic: 'dust',
    text:
      'Wood dust can bring on asthma, hardwood dust can cause cancer of the nose, and fine dust ' +
      'burns. Catch it at the tool, wear an FFP3 mask or one as good, and do not sweep it up dry. ' +
      'Limits differ by country: ask your local safety authority.',
    source: 'HSE Woodworking Sheet 23; UK limits 3 mg/m³ hardwood, 5 mg/m³ softwood (didac.co.uk)',
  },
  {
    id: 'hot-wire',
    topic: 'foam',
    text:
      'A hot wire is for polystyrene (EPS, XPS) only, outdoors or with strong air flow: the fumes ' +
      'hold styrene. Cut PUR and PIR with a knife or a fine saw and wear a mask, because hot they ' +
      'give off poison gas.',
    source: 'CLEAPSS advice quoted at terragenesis.com; from memory for PUR and PIR',
  },
  {
    id: 'foam-closed-in',
    topic: 'foam',
    text:
      'Leave no foam where bees, ants or mice can reach it. Ask the maker if the board holds an ' +
      'insecticide. Try glue on a scrap first, since many glues melt polystyrene.',
    source: 'Delaware state apiarist, 2024; Healthy Building Network, 2015; glue from memory',
  },
  {
    id: 'lid-and-floor',
    topic: 'lids',
    text:
      'A falling lid breaks fingers. Set the prop or stay before you reach in, and never trust a ' +
      'spring alone. Keep both hands clear of the hinged floor, and latch it before anyone lifts.',
    source: 'from memory: shop practice; gas springs weaken in the cold',
  },
  {
    id: 'long-hive-lift',
    topic: 'lifting',
    text:
      'Never lift a long hive that holds bees and honey. Move it empty, with a barrow or enough ' +
      'helpers, entrance closed and lid and floor latched. The lifting equation gives 23 kg only ' +
      'for a perfect lift close to the body; it does not know your back, so ask a doctor.',
    source: 'NIOSH revised lifting equation; Mangum, American Bee Journal, December 2024',
  },
  {
    id: 'stings',
    topic: 'stings',
    text:
      'Trouble breathing, a swelling face or throat, or faintness within minutes of a sting is an ' +
      'emergency: call for help at once and use the injector a doctor has prescribed. Flick the ' +
      'sting out fast. If you know you are allergic, ask your doctor before you keep bees, and ' +
      'never work alone.',
    source: 'Demirkale et al. 2020, Allergol. Immunopathol. 48:640; Apiculture New Zealand',
  },
  {
    id: 'snow-load',
    topic: 'snow',
    text:
      'Deep snow can add more weight than a person can lift. Clear the lid before you open it, ' +
      'and keep an exit free for the bees. The lid is not checked against your snow load: use the ' +
      'local building code, or ask a licensed engineer.',
    source: 'from memory: EN 1991-1-3 and ASCE 7, 1 kPa is about 102 kg on each square metre',
  },
  {
    id: 'wind-load',
    topic: 'wind',
    text:
      'An open lid is a sail. Do not open it in strong gusts, and strap or latch it when you ' +
      'leave. Storm loads and ground anchors are a matter for local codes and a licensed engineer.',
    source: 'EN 1991-1-4 gust pressure; Cantin 2006 on tying lids down',
  },
  {
    id: 'finish-outside',
    topic: 'finish',
    text:
      'Paint the outside only, with exterior water-based paint free of insect or mould killer, ' +
      'and let it cure and air before bees move in. Inside stays bare.',
    source: 'The Backyard Beekeeper p. 49 (what-when-how.com); additives from memory',
  },
  {
    id: 'treated-timber',
    topic: 'finish',
    text:
      'Treated timber is for the feet of the stand, never where bees or comb can touch it: some ' +
      'treatments kill colonies and end up in wax. Use stainless or hot-dip galvanised fixings, ' +
      'and follow local rules for scraps; never burn them.',
    source: 'US Forest Products Laboratory hive trial; EN 335 use classes; burning from memory',
  },
  {
    id: 'smoker',
    topic: 'fire',
    text:
      'Light the smoker on bare ground with water at hand, carry it in a metal bucket, and put it ' +
      'out before it goes in a car. Keep flame off foam and wax. Obey fire bans and local fire ' +
      'rules.',
    source: 'Bedfordshire Beekeepers Association, using a smoker; naturesnectar.blogspot.com, 2012',
  },
]
