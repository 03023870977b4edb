import { choice, count, length, mass, percent, temperature, text } from './field.ts'

/** The design's name and words for the title block. */
export const TITLE_FIELDS = {
  name: text({
    label: 'Name of the hive',
    meaning: 'Printed in the title block of every sheet.',
    maxLength: 80,
    default: 'Quarry Lane long hive',
  }),
  owner: text({
    label: 'Builder',
    meaning: 'Who builds it; printed in the title block.',
    maxLength: 80,
    default: 'Quarry Lane teaching apiary (invented)',
  }),
  note: text({
    label: 'Note',
    meaning: 'Anything worth remembering; printed on the first sheet.',
    maxLength: 600,
    default: '',
  }),
}

export const STAND_FIELDS = {
  form: choice({
    label: 'Stand',
    meaning:
      'What carries the hive. The bearers under the end walls leave the floor free to swing.',
    options: { legs: 'Four legs', trestle: 'Splayed trestles', none: 'None: on the bearers' },
    default: 'legs',
  }),
  workingHeightMm: length({
    label: 'Working height',
    meaning: 'From the ground to the top bars, where your hands work.',
    min: 300,
    max: 1300,
    step: 5,
    default: 850,
  }),
  legWidthMm: length({
    label: 'Leg section',
    meaning: 'Width of the square legs.',
    min: 38,
    max: 120,
    default: 60,
  }),
}

export const SITE_FIELDS = {
  exposure: choice({
    label: 'Exposure',
    meaning: 'How open the place is to wind and driven rain.',
    options: { sheltered: 'Sheltered', normal: 'Ordinary', exposed: 'Open and windy' },
    default: 'exposed',
  }),
  annualMeanC: temperature({
    label: 'Mean temperature of the year',
    meaning: 'The average outside temperature of a whole year.',
    min: -15,
    max: 30,
    default: 8,
  }),
  seasonalSwingC: temperature({
    label: 'Summer to winter swing',
    meaning: 'From the mean of the coldest month to the mean of the warmest.',
    min: 0,
    max: 50,
    default: 12,
  }),
  meanHumidityPercent: percent({
    label: 'Mean humidity',
    meaning: 'The average relative humidity of the outside air.',
    min: 10,
    max: 100,
    default: 84,
  }),
  coldNightC: temperature({
    label: 'Cold night',
    meaning: 'The worst night that the hive should be judged by.',
    min: -45,
    max: 15,
    default: -10,
  }),
}

export const COLONY_FIELDS = {
  strength: choice({
    label: 'Colony',
    meaning: 'A strong colony fills the hive in summer; a small one needs less room.',
    options: { strong: 'Strong', small: 'Small' },
    default: 'strong',
  }),
  clusterKg: mass({
    label: 'Winter cluster',
    meaning: 'The mass of bees that go into winter, for each colony.',
    min: 0.3,
    max: 4,
    step: 0.1,
    default: 2,
  }),
  storesKg: mass({
    label: 'Winter stores wanted',
    meaning: 'Honey that each colony should have for the winter.',
    min: 5,
    max: 60,
    default: 20,
  }),
  cavityAirC: temperature({
    label: 'Air in the hive on a cold night',
    meaning: 'The air temperature that heat losses are worked out for.',
    min: 0,
    max: 35,
    default: 12,
  }),
}

export const KEEPER_FIELDS = {
  comfortableLiftKg: mass({
    label: 'Comfortable lift',
    meaning: 'What you lift with both hands, often, without thinking about it.',
    min: 1,
    max: 30,
    default: 8,
  }),
  elbowHeightMm: length({
    label: 'Elbow height',
    meaning: 'From the ground to your elbow, standing or seated as you work.',
    min: 500,
    max: 1400,
    step: 10,
    default: 1050,
  }),
  people: count({
    label: 'People at the hive',
    meaning: 'How many work together when something heavy is moved.',
    min: 1,
    max: 4,
    default: 1,
  }),
}
