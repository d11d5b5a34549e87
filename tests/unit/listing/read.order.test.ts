import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const WORDS =
  'Oak stand with two drawers, one knob was turned new. The treadle runs without a sound and the belt is of leather.';
const HEAD = '<title>Oak stand with a treadle | Thrift Shelf</title>';
const read = (html: string) => readListing(documentOf(`${HEAD}${html}`));
const advert = (more = '') => `<section><h2>Oak stand with a treadle</h2>${more}<p>${WORDS}</p></section>`;

// What a law over whole pages has found, each by itself.
describe('a part of the page that stands where it is not expected', () => {
  it('has no icon of what stands before it: its heading is no place by a map’s picture', () => {
    const map = '<div><div><p>Netherholme, Upper Marl</p><img src="/map.svg" alt=""></div></div>';
    const { place } = read(
      `${advert('<p class="price">£9</p>')}${map}<section><h3>Goes well</h3><p>A lamp</p></section>`,
    );
    expect(place).not.toBe('Goes well');
  });

  it('is no place either where it begins with the name of the site, which the window calls by its address', () => {
    const map = '<div><div><p>Netherholme, Upper Marl</p><img src="/map.svg" alt=""></div></div>';
    const { place } = readListing(
      documentOf(
        `<title>Oak stand with a treadle | Thriftshelf.example</title>${advert('<p class="price">£9</p>')}${map}<header><a href="/">Thriftshelf</a><nav><a href="/a">Lamps</a></nav></header>`,
      ),
    );
    expect(place).not.toBe('Thriftshelf');
  });

  it.each(['Support us', 'Donate to this site', 'Spenden', 'Soutenir le site'])(
    'asks for gifts, and is no price of the advert: %s',
    (heading) => {
      const gifts = `<section><h3>${heading}</h3><p>We live on gifts: <a href="/g">£5</a> <a href="/g">£20</a></p></section>`;
      expect(read(`${gifts}${advert()}`).price).toBeNull();
      expect(read(`${advert()}${gifts}`).price).toBeNull();
    },
  );

  it.each(['Passend dazu', 'D’autres trocs'])(
    'shows other things, whose pictures are not the advert’s: %s',
    (heading) => {
      const others = `<section><h3>${heading}</h3>${[1, 2, 3]
        .map((n) => `<div><img src="/other/${n}.png" alt=""><b>Lamp ${n}</b> for <b>a chair</b></div>`)
        .join('')}</section>`;
      const photos = ['https://market.example/own/1.png'];
      expect(read(`${others}${advert('<img src="/own/1.png" alt=""><p class="price">£9</p>')}`).photos).toEqual(photos);
    },
  );
});
